import { describe, expect, test } from 'vitest';
import { goodsWords, packsWords, packWords } from '#shared-calc/quantity/goods-words.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';

describe('goodsWords', () => {
  test.each([
    [16.837, 'L', '16.84\u00a0L'],
    [0.249546, 'm2', '0.2495\u00a0m²'],
    [3, 'each', '3'],
    [500, 'g', '500.00\u00a0g'],
  ])('%s %s is said as %s', (amount, unit, words) => {
    expect(goodsWords(amount, unit, plainDisplay)).toBe(words);
  });
});

describe('packsWords', () => {
  test('packs are counted, single pieces just numbered', () => {
    const packs = [
      { amount: 10, count: 1 },
      { amount: 1, count: 3 },
    ];
    expect(packsWords({ sale: 'packs', unit: 'each', packs }, plainDisplay)).toBe('1 × 10\u00a0pieces, 3');
    expect(packsWords({ sale: 'packs', unit: 'L', packs: [{ amount: 45, count: 1 }] }, plainDisplay)).toBe(
      '1 × 45\u00a0L',
    );
    expect([
      packsWords({ sale: 'cut', unit: 'm2', packs: [] }, plainDisplay),
      packsWords({ sale: 'own', unit: 'each', packs: [] }, plainDisplay),
    ]).toEqual(['cut to size', 'our own']);
  });
});

describe('packWords', () => {
  test("a pack is said in the unit it is sold in, with the workshop's own decimal sign", () => {
    expect([packWords(47.5, 'g', { ...plainDisplay, decimalComma: true }), packWords(1, 'each', plainDisplay)]).toEqual(
      ['47,5\u00a0g', '1\u00a0piece'],
    );
  });
});
