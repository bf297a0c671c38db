import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coverGlassLeast } from '#shared-calc/trade/air-and-light/cover-glass-least.ts';

describe('coverGlassLeast', () => {
  // Stress for good, and with a hand, in N/mm2, worked by hand.
  test.each([
    { as: 'one lamp over half a tank (2.10 and 12.12)', figures: [447, 418, 1.2], gives: 4 },
    { as: 'one lamp over 600 mm (2.79 and 12.56)', figures: [597, 573, 1.2], gives: 4 },
    { as: 'two lamps over 900 mm (4.57 and 13.51)', figures: [897, 418, 2.4], gives: 6 },
    { as: 'three lamps over 1.2 m (3.74 and 6.87)', figures: [1197, 573, 3.6], gives: 10 },
    { as: 'a small tank (1.41 and 11.60)', figures: [297, 273, 1], gives: 4 },
  ])('$as: $gives mm', ({ figures, gives }) => {
    expect(coverGlassLeast.compute(figures)).toBe(gives);
  });

  test('a longer or more loaded pane is never thinner, a wider one never thicker', () => {
    const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    const leastOf = (span: number, width: number, load: number) => {
      const least = coverGlassLeast.compute([span, width, load]);
      return typeof least === 'number' ? least : Number.POSITIVE_INFINITY;
    };
    fc.assert(
      fc.property(between(100, 1500), between(100, 800), between(0, 10), between(1, 2), (span, width, load, more) => {
        const least = leastOf(span, width, load);
        expect(leastOf(span * more, width, load)).toBeGreaterThanOrEqual(least);
        expect(leastOf(span, width, load * more)).toBeGreaterThanOrEqual(least);
        expect(leastOf(span, width * more, load)).toBeLessThanOrEqual(least);
      }),
    );
  });

  test.each([
    { as: 'no span', figures: [0, 400, 1], says: 'The span must be more than zero.' },
    { as: 'no width', figures: [400, 0, 1], says: 'The width must be more than zero.' },
    { as: 'a load below 0', figures: [400, 400, -1], says: 'The load cannot be below zero.' },
    {
      as: 'a pane that no glass makes good',
      figures: [3000, 400, 20],
      says: 'No pane of 12 mm or less does it: put a rail under it.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(coverGlassLeast.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    {
      as: 'sides the wrong way round',
      figures: [300, 400, 1],
      says: 'The longer side spans: give the longer one first.',
    },
    { as: 'nothing in a square', figures: [400, 400, 1], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = coverGlassLeast.compute(figures);
    expect(coverGlassLeast.warn?.(figures, Number(answer))).toBe(says);
  });
});
