import { describe, expect, test } from 'vitest';
import { coverPaneDepth } from '#shared-calc/trade/air-and-light/cover-pane-depth.ts';

describe('coverPaneDepth', () => {
  // Worked by hand from the sum; clearances and gaps are common practice, no source.
  test.each([
    {
      as: 'behind a 25 mm strip 445 mm leave 418 (418.5 rounds down)',
      figures: [445, 25, 1.5],
      gives: 418,
      digits: 12,
    },
    { as: 'with no strip the pane closes the top', figures: [445, 0, 1.5], gives: 443, digits: 12 },
    { as: '50 mm is still a cover', figures: [76.5, 25, 1.5], gives: 50, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(coverPaneDepth.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'a vent that leaves almost nothing', figures: [76, 25, 1.5], says: 'The vent leaves almost no cover.' },
    { as: 'a vent below zero', figures: [445, -1, 1.5], says: 'The vent strip cannot be below zero.' },
    { as: 'a clearance below zero', figures: [445, 25, -1], says: 'Clearance cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(coverPaneDepth.compute(figures)).toEqual({ refused: says });
  });
});
