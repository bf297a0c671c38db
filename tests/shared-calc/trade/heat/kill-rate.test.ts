import { describe, expect, test } from 'vitest';
import { killRate } from '#shared-calc/trade/heat/kill-rate.ts';

describe('killRate', () => {
  // Worked by hand from the definition of D and z.
  test.each([
    { as: 'at 119.763 degC a minute is worth 0.752 at 121', figures: [119.763, 121, 10], gives: 0.752, digits: 3 },
    { as: 'at the reference a minute is worth a minute', figures: [121, 121, 10], gives: 1, digits: 12 },
    { as: 'ten degrees below, a tenth of one', figures: [111, 121, 10], gives: 0.1, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(killRate.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a step of zero',
      figures: [121, 121, 0],
      says: 'The ten-fold step (z) must be above zero; moist spores have about 10 K.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(killRate.compute(figures)).toEqual({ refused: says });
  });
});
