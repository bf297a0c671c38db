import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tankFloorArea } from '#shared-calc/trade/geometry/tank-floor-area.ts';

describe('tankFloorArea', () => {
  // Worked by hand to the digits shown.
  test.each([
    [['rectangle', 900, 445, 0, 0], 0.4005, 9],
    [['bow', 890, 390, 70, 0], 0.388838, 6],
    [['hexagon', 300, 300, 0, 0], 0.233827, 6],
    [['corner', 580, 580, 0, 250], 0.28195, 9],
    [['cylinder', 400, 400, 0, 0], 0.125664, 6],
  ])('shape, length, depth, bow, return %j: %d m2', (args, area, digits) => {
    expect(tankFloorArea.compute(args)).toBeCloseTo(area, digits);
  });

  test('measurements that the shape does not have are not read', () => {
    expect(tankFloorArea.compute(['rectangle', 900, 445, -1, 9999])).toBe(0.4005);
    expect(tankFloorArea.compute(['hexagon', 300, 0, 800, 800])).toBe(
      tankFloorArea.compute(['hexagon', 300, 300, 0, 0]),
    );
    expect(tankFloorArea.compute(['cylinder', 400, 0, 800, 800])).toBe(
      tankFloorArea.compute(['cylinder', 400, 400, 0, 0]),
    );
  });

  test('a bow of nothing is a rectangle, a return as good as the side a square, no return a triangle', () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 3000 }), fc.integer({ min: 100, max: 3000 }), (length, depth) => {
        expect(tankFloorArea.compute(['bow', length, depth, 0, 0])).toBe((length * depth) / 1e6);
        expect(tankFloorArea.compute(['corner', length, depth, 0, length - 1e-9])).toBeCloseTo(length ** 2 / 1e6, 12);
        expect(tankFloorArea.compute(['corner', length, depth, 0, 0])).toBe(length ** 2 / 2e6);
      }),
    );
  });

  test('a bow of half the width is a half circle before the rectangle', () => {
    expect(tankFloorArea.compute(['bow', 600, 300, 300, 0])).toBeCloseTo(0.18 + (Math.PI * 0.3 ** 2) / 2, 12);
  });

  test.each([
    [['bow', 890, 390, 446, 0], 'The bow is deeper than a half circle; check the sagitta.'],
    [['bow', 890, 390, -1, 0], 'Bow cannot be below zero.'],
    [['bow', 890, 0, 70, 0], 'Depth must be more than zero.'],
    [['corner', 580, 580, 0, 580], 'The side return must be shorter than the side.'],
    [['corner', 580, 580, 0, -5], 'Side return cannot be below zero.'],
    [['rectangle', -900, 445, 0, 0], 'Length must be more than zero.'],
    [['rectangle', 900, 0, 0, 0], 'Depth must be more than zero.'],
    [['hexagon', 0, 0, 0, 0], 'Side must be more than zero.'],
    [['cylinder', -1, 0, 0, 0], 'Diameter must be more than zero.'],
  ])('%j cannot be', (args, says) => {
    expect(tankFloorArea.compute(args)).toEqual({ refused: says });
  });
});
