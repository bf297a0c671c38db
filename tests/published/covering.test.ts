import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { packMix } from '#shared-calc/trade/buying/pack-mix.ts';

/*
 * Covering a need with whole packs. Values: Rosetta Code, Knapsack problem/Unbounded; the law of dynamic
 * programming f[n] = min over packs f[max(0, n - size)] + price is stronger than any instance.
 */

describe('the unbounded knapsack with two limits (Rosetta Code)', () => {
  test('is worth 54500 at best, in four ways', () => {
    expect(bestLoads()).toEqual({
      value: 54_500,
      ways: [
        [0, 15, 11],
        [3, 10, 11],
        [6, 5, 11],
        [9, 0, 11],
      ],
    });
  });

  test('beside the 11 gold that all four share, 225 parts of volume are worth 27,000, in fewest pieces as 9 of the larger', () => {
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

/** Values 3000, 1800, 2500; weights 0.3, 0.2, 2.0 up to 25; volumes 0.025, 0.015, 0.002 up to 0.25; in whole parts. */
function bestLoads(): { readonly value: number; readonly ways: readonly (readonly number[])[] } {
  const loads = upTo(10)
    .flatMap((panacea) => upTo(16).flatMap((ichor) => upTo(12).map((gold) => [panacea, ichor, gold])))
    .filter(([panacea = 0, ichor = 0, gold = 0]) => {
      const weight = 3 * panacea + 2 * ichor + 20 * gold;
      return weight <= 250 && 25 * panacea + 15 * ichor + 2 * gold <= 250;
    });
  const worth = ([panacea = 0, ichor = 0, gold = 0]: readonly number[]) => 3000 * panacea + 1800 * ichor + 2500 * gold;
  const value = Math.max(...loads.map(worth));
  return { value, ways: loads.filter((load) => worth(load) === value) };
}

function upTo(most: number): readonly number[] {
  return Array.from({ length: most + 1 }, (_, count) => count);
}
