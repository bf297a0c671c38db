import { describe, expect, test } from 'vitest';
import { priceFromMarkup } from '#shared-calc/trade/price/price-from-markup.ts';

describe('priceFromMarkup', () => {
  // Worked by hand from the definition of mark-up.
  test.each([
    { as: '100 with 35 % added is 135.00', figures: [100, 0.35], gives: 135, digits: 9 },
    { as: 'nothing added sells at cost', figures: [100, 0], gives: 100, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(priceFromMarkup.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a price below nothing',
      figures: [100, -1.1],
      says: 'A mark-up below -100 % makes the price less than nothing.',
    },
    { as: 'a cost below zero', figures: [-1, 0.35], says: 'Cost cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(priceFromMarkup.compute(figures)).toEqual({ refused: says });
  });
});
