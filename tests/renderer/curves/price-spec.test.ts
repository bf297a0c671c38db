import { describe, expect, test } from 'vitest';
import { priceSpec, type PricedSize } from '#renderer/curves/price-spec.ts';

const words = { unit: 'L', currency: 'cr', moneyDecimals: 2, decimalComma: false };
const t03: PricedSize = { size: 'T03', room: 88.1, price: 1303.24 };
const t07: PricedSize = { size: 'T07', room: 240.3, price: 2156.15 };

describe('priceSpec', () => {
  test('sizes stand in order of what they hold, each with what a litre of it costs', () => {
    const spec = priceSpec([t07, t03], words);
    // 1303.24 / 88.1 = 14.79 and 2156.15 / 240.3 = 8.97
    expect([spec?.title, spec?.lines[0]?.pieces, spec?.table.rows]).toEqual([
      '1 L of tank costs 8.97 cr in T07, 14.79 cr in T03',
      [
        [
          [88.1, 1303.24],
          [240.3, 2156.15],
        ],
      ],
      [
        ['T03', '88.1', '1,303.24', '14.79'],
        ['T07', '240.3', '2,156.15', '8.97'],
      ],
    ]);
  });

  test('two columns of the same size and price are named at one point', () => {
    const spec = priceSpec([t03, { ...t03, size: 'T03#2' }, t07], words);
    expect(spec?.words?.map((each) => each.words)).toEqual(['T03, T03#2', 'T07']);
  });

  test('a name that the one before would cover stands below its point', () => {
    const near = { size: 'T02', room: 90, price: 1290 };
    expect(priceSpec([t03, near, t07], words)?.words?.map((each) => [each.words, each.away])).toEqual([
      ['T03', -10],
      ['T02', 18],
      ['T07', -10],
    ]);
  });

  test('one size is no curve', () => {
    expect(priceSpec([t03], words)).toBeUndefined();
  });
});
