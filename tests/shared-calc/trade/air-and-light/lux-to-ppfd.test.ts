import { describe, expect, test } from 'vitest';
import { luxToPpfd } from '#shared-calc/trade/air-and-light/lux-to-ppfd.ts';

describe('luxToPpfd', () => {
  // Factors from memory, the rest worked by hand.
  test.each([
    { as: '6,000 lux of a white lamp bar are 87', figures: [6000, 0.0145], gives: 87, digits: 9 },
    { as: 'no lux is no light', figures: [0, 0.0145], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(luxToPpfd.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'a reading below zero', figures: [-1, 0.0145], says: 'Lux cannot be below zero.' },
    { as: 'a factor below zero', figures: [6000, -0.01], says: 'The factor cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(luxToPpfd.compute(figures)).toEqual({ refused: says });
  });
});
