import { describe, expect, test } from 'vitest';
import { markupFromMargin } from '#shared-calc/trade/price/markup-from-margin.ts';

describe('markupFromMargin', () => {
  // Worked by hand from the definitions of margin and mark-up.
  test.each([
    { as: 'a margin of 40 % adds 66.67 %', figures: [0.4], gives: 0.6667, digits: 4 },
    { as: 'a margin of 35 % adds 53.85 %', figures: [0.35], gives: 0.5385, digits: 4 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(markupFromMargin.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a margin of all',
      figures: [1],
      says: "Margin is a share of the price and stays below 1. For 'add 60 %' use mark-up.",
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(markupFromMargin.compute(figures)).toEqual({ refused: says });
  });
});
