import fc from 'fast-check';
import loadHighs from 'highs';
import { beforeAll, describe, expect, test } from 'vitest';
import { packMix, type PackOffer } from '#shared-calc/trade/buying/pack-mix.ts';

/** A second, independent integer solver over many more and larger cases than the everyday tests try. */
describe('packMix against a second solver', () => {
  let leastBySolver: (need: number, packs: readonly PackOffer[]) => number = () => NaN;

  beforeAll(async () => {
    const highs = await loadHighs();
    leastBySolver = (need, packs) => {
      const solution = highs.solve(modelOf(need, packs), { mip_rel_gap: 0, mip_abs_gap: 0 });
      return solution.Status === 'Optimal' ? Math.round(solution.ObjectiveValue) : NaN;
    };
  });

  test.each([
    { says: 'packs of one unit at prices by chance', packs: tenths(fc.integer({ min: 1, max: 9000 })), most: 400 },
    { says: 'the larger the cheaper, as shops have it', packs: byScale(), most: 400 },
    { says: 'large needs', packs: byScale(), most: 6000 },
    { says: 'litres, quarts and gallons together', packs: mixedUnits(), most: 400 },
  ])(
    '$says: 500 cases cost the same',
    ({ packs, most }) => {
      const anyNeed = fc.integer({ min: 1, max: most * 100 }).map((hundredths) => hundredths / 100);
      fc.assert(
        fc.property(anyNeed, packs, fc.boolean(), (need, offered, keeps) => {
          const mix = packMix({ need, onHand: 0, packs: offered, keeps });
          expect(mix.ok && mix.value.costCoins).toBe(leastBySolver(need, offered));
        }),
        { numRuns: 500, seed: 7 },
      );
    },
    300_000,
  );
});

type Packs = fc.Arbitrary<readonly PackOffer[]>;

function tenths(price: fc.Arbitrary<number>): Packs {
  return fc
    .uniqueArray(fc.tuple(fc.integer({ min: 1, max: 900 }), price), {
      minLength: 1,
      maxLength: 5,
      selector: ([size]) => size,
    })
    .map((packs) => packs.map(([size, priceCoins]) => ({ id: `p${size}`, amount: size / 10, priceCoins })));
}

function byScale(): Packs {
  return tenths(fc.integer({ min: 90, max: 110 })).map((packs) =>
    packs.map((pack) => ({
      ...pack,
      priceCoins: Math.max(1, Math.round((pack.priceCoins ?? 0) * pack.amount ** 0.9)),
    })),
  );
}

/** Exact litres: 1 L, 5 L, 20 L, a dry quart, 8 dry quarts, a gallon, a quart, a cubic foot (NIST Handbook 44, App. C). */
const sizes = [1, 5, 20, 1.101220942715, 8.80976754172, 3.785411784, 0.946352946, 28.316846592];

function mixedUnits(): Packs {
  return fc
    .tuple(
      fc.subarray(sizes, { minLength: 2, maxLength: 5 }),
      fc.array(fc.integer({ min: 60, max: 140 }), { minLength: 8, maxLength: 8 }),
    )
    .map(([chosen, prices]) =>
      chosen.map((amount, at) => ({ id: `p${amount}`, amount, priceCoins: Math.round(amount * (prices[at] ?? 100)) })),
    );
}

function modelOf(need: number, packs: readonly PackOffer[]): string {
  const terms = (of: (pack: PackOffer) => number) => packs.map((pack, at) => `${of(pack)} x${at}`).join(' + ');
  return [
    'Minimize',
    ` coins: ${terms((pack) => pack.priceCoins ?? 0)}`,
    'Subject To',
    ` cover: ${terms((pack) => pack.amount)} >= ${need}`,
    'General',
    ` ${packs.map((_, at) => `x${at}`).join(' ')}`,
    'End',
  ].join('\n');
}
