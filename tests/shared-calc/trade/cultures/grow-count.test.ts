import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seedCount } from '#shared-calc/trade/cultures/seed-count.ts';
import { growCount } from '#shared-calc/trade/cultures/grow-count.ts';

describe('growCount', () => {
  // Worked by hand from logistic growth; rates from memory.
  test.each([
    { as: '500 springtails are 2,820.0 after 30 days', figures: [500, 8000, 0.07, 30], gives: 2820.0, digits: 1 },
    { as: 'ten isopods are 83 after 90 days on 0.4 m2', figures: [10, 600, 0.025, 90], gives: 83, digits: 0 },
    { as: 'no time, no growth', figures: [500, 8000, 0.07, 0], gives: 500, digits: 9 },
    { as: 'nothing grows from nothing', figures: [0, 8000, 0.07, 30], gives: 0, digits: 12 },
    { as: 'a full tub stays full', figures: [8000, 8000, 0.07, 30], gives: 8000, digits: 9 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(growCount.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'more than the tub holds', figures: [9000, 8000, 0.07, 30], says: 'More animals than the tub can hold.' },
    { as: 'a start below zero', figures: [-1, 8000, 0.07, 30], says: 'The start cannot be below zero.' },
    { as: 'a growth below zero', figures: [500, 8000, -0.07, 30], says: 'Growth a day cannot be below zero.' },
    { as: 'a time below zero', figures: [500, 8000, 0.07, -1], says: 'Time cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(growCount.compute(figures)).toEqual({ refused: says });
  });

  test('what is seeded for a target grows to it', () => {
    const parts = {
      share: fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      days: fc.double({ min: 0, max: 60, noNaN: true }),
    };
    fc.assert(
      fc.property(fc.record(parts), ({ share, days }) => {
        const seeded = Number(seedCount.compute([share * 20000, 20000, 7, days]));
        expect(Number(growCount.compute([seeded, 20000, 0.07, days])) / (share * 20000)).toBeCloseTo(1, 9);
      }),
    );
  });
});
