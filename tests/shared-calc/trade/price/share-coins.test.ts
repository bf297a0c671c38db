import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shareCoins } from '#shared-calc/trade/price/share-coins.ts';

describe('shareCoins', () => {
  // Worked by hand.
  test.each([
    { as: 'by weight', coins: 750, weights: [2, 1], parts: [500, 250] },
    { as: 'the earlier where remainders tie', coins: 1, weights: [1, 1], parts: [1, 0] },
    { as: 'evenly where nothing weighs', coins: 3, weights: [0, 0], parts: [2, 1] },
    { as: 'to nobody', coins: 3, weights: [], parts: [] },
  ])('shares $as', ({ coins, weights, parts }) => {
    expect(shareCoins(coins, weights)).toEqual(parts);
  });

  test('the parts add up, and each is within a coin of its share', () => {
    const weights = fc.array(fc.integer({ min: 0, max: 10 ** 9 }), { minLength: 1, maxLength: 20 });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 ** 9 }), weights, (coins, by) => {
        const all = by.reduce((sum, weight) => sum + weight, 0);
        const parts = shareCoins(coins, by);
        expect(parts.reduce((sum, part) => sum + part, 0)).toBe(coins);
        const far = parts.filter((part, at) => all > 0 && Math.abs(part - (coins * (by[at] ?? 0)) / all) > 1 + 1e-6);
        expect(far).toEqual([]);
      }),
    );
  });
});
