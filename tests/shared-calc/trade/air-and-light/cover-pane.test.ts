import { describe, expect, test } from 'vitest';
import { coverPane } from '#shared-calc/trade/air-and-light/cover-pane.ts';

const top = { length: 900, depth: 445, vent: 25, clear: 1.5, gap: 2, longest: 600 } as const;

describe('coverPane', () => {
  // Worked by hand from the sum; clearances and gaps are common practice, no source.
  test('a 900 x 445 top takes two panes of 447 x 418 mm', () => {
    expect(coverPane(top)).toEqual({ panes: 2, length: 447, depth: 418 });
  });

  test.each([
    { as: 'a tank without length', of: { length: 0 }, says: 'The length must be more than zero.' },
    { as: 'a gap below zero', of: { gap: -1 }, says: 'The gap cannot be below zero.' },
    { as: 'a vent over nearly all of it', of: { vent: 400 }, says: 'The vent leaves almost no cover.' },
  ])('refuses $as', ({ of, says }) => {
    expect(coverPane({ ...top, ...of })).toEqual({ refused: says });
  });
});
