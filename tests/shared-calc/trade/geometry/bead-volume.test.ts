import { describe, expect, test } from 'vitest';
import { beadVolume } from '#shared-calc/trade/geometry/bead-volume.ts';

describe('beadVolume', () => {
  // Geometry, worked by hand.
  test.each([
    [[2.69, 20, 20, 'triangle'], 0.538, 12],
    [[2.69, 20, 20, 'fillet'], 0.2309, 4],
    [[1.78, 10, 30, 'triangle'], 0.267, 12],
    [[2.69, 0, 20, 'triangle'], 0, 12],
  ])('perimeter m, width and height mm, profile %j: %d L', (args, litres, digits) => {
    expect(beadVolume.compute(args)).toBeCloseTo(litres, digits);
  });

  test('with no profile named it is a triangle', () => {
    expect(beadVolume.args.at(-1)?.otherwise).toBe('triangle');
  });

  test.each([
    [[-1, 20, 20, 'triangle'], 'Perimeter cannot be below zero.'],
    [[2.69, -20, 20, 'triangle'], 'Width cannot be below zero.'],
    [[2.69, 20, -20, 'fillet'], 'Height cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(beadVolume.compute(args)).toEqual({ refused: says });
  });
});
