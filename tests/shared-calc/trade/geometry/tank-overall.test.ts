import { describe, expect, test } from 'vitest';
import { tankOverallDepth } from '#shared-calc/trade/geometry/tank-overall-depth.ts';
import { tankOverallLength } from '#shared-calc/trade/geometry/tank-overall-length.ts';

describe('tankOverallLength', () => {
  // Geometry, worked by hand.
  test.each([
    ['rectangle', 900, 900],
    ['bow', 890, 890],
    ['corner', 580, 580],
    ['hexagon', 300, 600],
    ['cylinder', 400, 400],
  ])('a %s of %d mm is %d mm at its widest', (shape, length, widest) => {
    expect(tankOverallLength.compute([shape, length])).toBe(widest);
  });

  test('no length is no tank', () => {
    expect(tankOverallLength.compute(['hexagon', 0])).toEqual({ refused: 'Side must be more than zero.' });
  });
});

describe('tankOverallDepth', () => {
  test.each([
    [['rectangle', 900, 445, 0], 445],
    [['bow', 890, 390, 70], 460],
    [['corner', 580, 580, 0], 580],
    [['hexagon', 300, 300, 0], 300 * Math.sqrt(3)],
    [['cylinder', 400, 400, 0], 400],
  ])('shape, length, depth, bow %j: %d mm at its deepest', (args, deepest) => {
    expect(tankOverallDepth.compute(args)).toBe(deepest);
  });

  test('a bow past the half circle is refused', () => {
    expect(tankOverallDepth.compute(['bow', 600, 300, 301])).toEqual({
      refused: 'The bow is deeper than a half circle; check the sagitta.',
    });
  });
});
