import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roundTicks } from '#renderer/curves/round-ticks.ts';

describe('roundTicks', () => {
  test.each([
    [6610, 0, [0, 2000, 4000, 6000, 8000]],
    [134.1, 0, [0, 50, 100, 150]],
    [5.53, 0, [0, 2, 4, 6]],
    [1, 0, [0, 0.2, 0.4, 0.6, 0.8, 1]],
    [0, 0, [0, 1]],
  ])('up to %s from %s', (most, least, ticks) => {
    expect(roundTicks(most, least)).toEqual(ticks);
  });

  test('they hold what is drawn, rise evenly and are few', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e7, noNaN: true }), (most) => {
        const ticks = roundTicks(most);
        expect(ticks.length).toBeLessThanOrEqual(7);
        expect(ticks[0]).toBe(0);
        expect(ticks.at(-1)).toBeGreaterThanOrEqual(most * (1 - 1e-9));
      }),
    );
  });
});
