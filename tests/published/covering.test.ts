import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packMix } from '#shared-calc/trade/buying/pack-mix.ts';

/*
 * Covering a need with whole packs. Values: Rosetta Code, Knapsack problem/Unbounded; the law of dynamic
 * programming f[n] = min over packs f[max(0, n - size)] + price is stronger than any instance.
 */

describe('the unbounded knapsack (Rosetta Code)', () => {
  // All of its best loads have 11 gold; what is left of the volume is filled with the other two.
  test('beside the gold, 225 parts of volume are worth 27,000, in fewest pieces as 9 of the larger', () => {
    const packs = [
      { id: 'panacea', amount: 25, priceCoins: 3000 },
      { id: 'ichor', amount: 15, priceCoins: 1800 },
    ];
    const mix = packMix({ need: 225, onHand: 0, packs, keeps: false });
    expect(mix).toEqual({
      ok: true,
      value: { packs: [{ id: 'panacea', amount: 25, count: 9, priceCoins: 3000 }], costCoins: 27_000, leftOver: 0 },
    });
  });
});

describe('packMix follows the law of covering', () => {
  test('f[n] is the least over packs of f[n - size] and the price', () => {
    fc.assert(
      fc.property(somePacks, fc.integer({ min: 1, max: 150 }), (packs, most) => {
        const least = leastBySteps(packs, most);
        expect(Array.from({ length: most + 1 }, (_, need) => costOf(packs, need))).toEqual(least);
      }),
    );
  });

  test('more is never cheaper', () => {
    fc.assert(
      fc.property(somePacks, anyNeed, anyNeed, (packs, one, other) => {
        expect(costOf(packs, Math.min(one, other))).toBeLessThanOrEqual(costOf(packs, Math.max(one, other)));
      }),
    );
  });

  test('a mix never costs more than packs of one size alone', () => {
    fc.assert(
      fc.property(somePacks, anyNeed, (packs, need) => {
        const alone = packs.map((pack) => Math.ceil(need / pack.amount) * pack.priceCoins);
        expect(costOf(packs, need)).toBeLessThanOrEqual(Math.min(...alone));
      }),
    );
  });
});

interface WholePack {
  readonly id: string;
  readonly amount: number;
  readonly priceCoins: number;
}

const anyNeed = fc.integer({ min: 0, max: 5000 });
const somePacks: fc.Arbitrary<readonly WholePack[]> = fc.uniqueArray(
  fc
    .record({ amount: fc.integer({ min: 1, max: 60 }), priceCoins: fc.integer({ min: 1, max: 6000 }) })
    .map((pack) => ({ ...pack, id: `p${pack.amount}` })),
  { minLength: 1, maxLength: 5, selector: (pack) => pack.amount },
);

function costOf(packs: readonly WholePack[], need: number): number {
  const mix = packMix({ need, onHand: 0, packs, keeps: true });
  return mix.ok ? mix.value.costCoins : NaN;
}

function leastBySteps(packs: readonly WholePack[], most: number): readonly number[] {
  const least = [0];
  for (let need = 1; need <= most; need += 1) {
    least.push(Math.min(...packs.map((pack) => (least[Math.max(0, need - pack.amount)] ?? NaN) + pack.priceCoins)));
  }
  return least;
}
