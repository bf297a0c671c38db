import { describe, expect, test } from 'vitest';
import { flyTubs } from '#shared-calc/trade/cultures/fly-tubs.ts';

describe('flyTubs', () => {
  // Worked by hand from the sum; yields and days from memory.
  test.each([
    { as: 'four starts a week keep 20 tubs on the shelf', figures: [4, 14, 21], gives: 20, digits: 12 },
    { as: 'one start of the large kind keeps 7 (6.43)', figures: [1, 24, 21], gives: 7, digits: 12 },
    { as: 'no start, no tub', figures: [0, 14, 21], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(flyTubs.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'starts below zero', figures: [-1, 14, 21], says: 'Starts a week cannot be below zero.' },
    { as: 'days below zero', figures: [4, -14, 21], says: 'Days to the first flies cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(flyTubs.compute(figures)).toEqual({ refused: says });
  });
});
