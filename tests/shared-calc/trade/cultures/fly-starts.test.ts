import { describe, expect, test } from 'vitest';
import { flyStarts } from '#shared-calc/trade/cultures/fly-starts.ts';

describe('flyStarts', () => {
  // Worked by hand from the sum; yields and days from memory.
  test.each([
    {
      as: '1,400 flies from tubs of 500 with a tenth lost take 4 starts (3.11)',
      figures: [1400, 500, 0.1],
      gives: 4,
      digits: 12,
    },
    { as: 'one tub exactly is one start', figures: [350, 350, 0], gives: 1, digits: 12 },
    { as: 'no flies, no start', figures: [0, 500, 0.1], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(flyStarts.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'flies below zero', figures: [-1, 500, 0.1], says: 'Flies a week cannot be below zero.' },
    { as: 'a tub that gives none', figures: [1400, 0, 0.1], says: "A tub's yield must be more than zero." },
    { as: '10 typed for 10 %', figures: [1400, 500, 10], says: 'Loss is a share; 10 % is 0.1.' },
    { as: 'a loss below zero', figures: [1400, 500, -0.1], says: 'Loss cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(flyStarts.compute(figures)).toEqual({ refused: says });
  });
});
