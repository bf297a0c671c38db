import { describe, expect, test } from 'vitest';
import { coverPanes } from '#shared-calc/trade/air-and-light/cover-panes.ts';

describe('coverPanes', () => {
  // Worked by hand from the sum; clearances and gaps are common practice, no source.
  test.each([
    { as: '900 mm in panes of 600 take two', figures: [900, 600], gives: 2, digits: 12 },
    { as: '600 mm take one', figures: [600, 600], gives: 1, digits: 12 },
    { as: 'a hair over takes one more', figures: [600.1, 600], gives: 2, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(coverPanes.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'no length', figures: [0, 600], says: 'The length must be more than zero.' },
    { as: 'no longest pane', figures: [900, 0], says: 'The longest pane must be more than zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(coverPanes.compute(figures)).toEqual({ refused: says });
  });
});
