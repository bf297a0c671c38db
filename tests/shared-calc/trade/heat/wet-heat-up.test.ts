import { describe, expect, test } from 'vitest';
import { wetHeatUp } from '#shared-calc/trade/heat/wet-heat-up.ts';

describe('wetHeatUp', () => {
  // Worked by hand from the heats of water, from memory.
  test.each([
    ['460 g in an open tray at 300 W take 66.25 min', [460, 300, 'open', 20, 90], 66.25],
    ['covered, 7.5 min', [460, 300, 'covered', 20, 90], 7.5],
    ['no water takes no time', [0, 300, 'open', 20, 90], 0],
  ] as const)('%s', (_, figures, minutes) => {
    expect(wetHeatUp.compute(figures)).toBeCloseTo(minutes, 2);
  });

  test.each([
    ['no power', [460, 0, 'open', 20, 90], 'The power must be more than zero.'],
    ['a target that is no warmer', [460, 300, 'open', 90, 90], 'The target must be warmer than the start.'],
    [
      'more than boiling under cover',
      [460, 300, 'covered', 20, 100],
      'Covered and wet, leaves stay below 100 C: give a cooler target.',
    ],
    ['water below zero', [-1, 300, 'open', 20, 90], 'Water cannot be below zero.'],
  ] as const)('refuses %s', (_, figures, says) => {
    expect(wetHeatUp.compute(figures)).toEqual({ refused: says });
  });
});
