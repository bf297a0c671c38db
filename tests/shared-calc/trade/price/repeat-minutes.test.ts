import { describe, expect, test } from 'vitest';
import { repeatMinutes } from '#shared-calc/trade/price/repeat-minutes.ts';

describe('repeatMinutes', () => {
  // Worked by hand from the learning curve, common practice, no source.
  test.each([
    { as: 'the third build of 449.35 min takes 380.2', figures: [449.35, 3, 0.9], gives: 380.2, digits: 1 },
    { as: 'the first takes what it takes', figures: [449.35, 1, 0.9], gives: 449.35, digits: 9 },
    { as: 'the fourth takes two cuts of a tenth', figures: [100, 4, 0.9], gives: 81, digits: 9 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(repeatMinutes.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'a build before the first', figures: [449.35, 0, 0.9], says: 'Builds are counted from 1.' },
    { as: 'minutes below zero', figures: [-1, 3, 0.9], says: 'Minutes cannot be below zero.' },
    { as: 'no time at all left', figures: [449.35, 3, 0], says: 'The learning share must be more than zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(repeatMinutes.compute(figures)).toEqual({ refused: says });
  });
});
