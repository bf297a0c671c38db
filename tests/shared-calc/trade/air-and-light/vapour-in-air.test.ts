import { describe, expect, test } from 'vitest';
import { vapourInAir } from '#shared-calc/trade/air-and-light/vapour-in-air.ts';

describe('vapourInAir', () => {
  // Worked by hand from the Bolton 1980 form of the Magnus equation.
  test.each([
    { as: 'a damp tank at 24 degC holds 19.58 g', figures: [24, 0.9], gives: 19.58, digits: 2 },
    { as: 'a winter room at 21 degC holds 8.24 g', figures: [21, 0.45], gives: 8.24, digits: 2 },
    { as: 'dry air holds none', figures: [24, 0], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(vapourInAir.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: '90 typed for 90 %', figures: [24, 90], says: 'Humidity is a share from 0 to 1; you gave 90.' },
    { as: 'a humidity below zero', figures: [24, -0.1], says: 'Humidity is a share from 0 to 1; you gave -0.1.' },
    {
      as: 'air colder than the formula knows',
      figures: [-120, 0.5],
      says: 'The vapour formula needs air above -100 C.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(vapourInAir.compute(figures)).toEqual({ refused: says });
  });
});
