import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coverPaneLength } from '#shared-calc/trade/air-and-light/cover-pane-length.ts';

describe('coverPaneLength', () => {
  // Worked by hand from the sum; clearances and gaps are common practice, no source.
  test.each([
    { as: 'two panes over 900 mm are 447 mm (447.5 rounds down)', figures: [900, 2, 1.5, 2], gives: 447, digits: 12 },
    { as: 'one pane over 600 mm is 597 mm', figures: [600, 1, 1.5, 2], gives: 597, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(coverPaneLength.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'no panes', figures: [900, 0, 1.5, 2], says: 'Panes must be more than zero.' },
    { as: 'a pane and a half', figures: [900, 1.5, 1.5, 2], says: 'Panes are whole; you gave 1.5.' },
    { as: 'a clearance below zero', figures: [900, 2, -1, 2], says: 'Clearance cannot be below zero.' },
    { as: 'a gap below zero', figures: [900, 2, 1.5, -2], says: 'The gap cannot be below zero.' },
    {
      as: 'clearances that leave nothing',
      figures: [3, 1, 1.5, 2],
      says: 'Clearances and gaps leave no pane in 3 mm.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(coverPaneLength.compute(figures)).toEqual({ refused: says });
  });

  test('panes, gaps and clearances fit the tank, and leave less than a mm a pane', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 3000 }), fc.integer({ min: 1, max: 5 }), (length, panes) => {
        const spare = length - 3 - (panes - 1) * 2 - panes * Number(coverPaneLength.compute([length, panes, 1.5, 2]));
        expect(spare).toBeGreaterThanOrEqual(0);
        expect(spare).toBeLessThan(panes);
      }),
    );
  });
});
