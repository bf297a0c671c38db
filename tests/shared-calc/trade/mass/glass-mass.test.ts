import { describe, expect, test } from 'vitest';
import { glassMass } from '#shared-calc/trade/mass/glass-mass.ts';

describe('glassMass', () => {
  // Worked by hand from EN 572-1: 2500 kg/m3.
  test.each([
    { as: 'the glass of a 900 x 445 x 600 tank weighs 30.22 kg', figures: [2.0145, 6], gives: 30.22, digits: 2 },
    { as: 'its cover weighs 3.737 kg', figures: [0.37369199999999997, 4], gives: 3.737, digits: 3 },
    { as: 'no pane weighs nothing', figures: [0, 6], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(glassMass.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'an area below zero', figures: [-1, 6], says: 'Area cannot be below zero.' },
    { as: 'a thickness below zero', figures: [1, -6], says: 'Thickness cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(glassMass.compute(figures)).toEqual({ refused: says });
  });
});
