import { describe, expect, test } from 'vitest';
import { priceFromMargin } from '#shared-calc/trade/price/price-from-margin.ts';

describe('priceFromMargin', () => {
  // Worked by hand from the definition of margin.
  test.each([
    { as: '100 with a margin of 35 % is 153.85', figures: [100, 0.35], gives: 153.85, digits: 2 },
    { as: 'no margin sells at cost', figures: [100, 0], gives: 100, digits: 12 },
    { as: 'a margin below zero sells under cost', figures: [100, -0.25], gives: 80, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(priceFromMargin.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a margin of all',
      figures: [100, 1],
      says: "Margin is a share of the price and stays below 1. For 'add 60 %' use mark-up.",
    },
    {
      as: '35 typed for 35 %',
      figures: [100, 35],
      says: "Margin is a share of the price and stays below 1. For 'add 60 %' use mark-up.",
    },
    { as: 'a cost below zero', figures: [-1, 0.35], says: 'Cost cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(priceFromMargin.compute(figures)).toEqual({ refused: says });
  });
});
