import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tankFloorArea } from '#shared-calc/trade/geometry/tank-floor-area.ts';
import { tankFootprint } from '#shared-calc/trade/geometry/tank-footprint.ts';
import { anyTank, asArguments } from './any-tank.ts';

const glass = fc.double({ min: 2, max: 19, noNaN: true });
const side = fc.double({ min: 100, max: 3000, noNaN: true });

describe('tankFootprint', () => {
  // Geometry, worked by hand.
  test('900 x 445 mm inside 6 mm glass stands on 912 x 457 mm', () => {
    expect(tankFootprint.compute(['rectangle', 900, 445, 0, 0, 6])).toBeCloseTo(0.416784, 12);
  });

  test('it is the floor of the outside, glass measured square to every wall', () => {
    fc.assert(
      fc.property(side, glass, fc.double({ min: 0, max: 0.95, noNaN: true }), (length, g, share) => {
        const hexagon = (3 / 2) * Math.sqrt(3) * (length + (2 * g) / Math.sqrt(3)) ** 2;
        expect(tankFootprint.compute(['hexagon', length, 0, 0, 0, g])).toBeCloseTo(hexagon / 1e6, 9);
        const round = Math.PI * (length / 2 + g) ** 2;
        expect(tankFootprint.compute(['cylinder', length, 0, 0, 0, g])).toBeCloseTo(round / 1e6, 9);
        const cut = length * (1 - share) + 2 * g - g * Math.SQRT2;
        const corner = (length + 2 * g) ** 2 - cut ** 2 / 2;
        expect(tankFootprint.compute(['corner', length, 0, 0, length * share, g])).toBeCloseTo(corner / 1e6, 9);
      }),
    );
  });

  test('without glass it is the inside floor', () => {
    fc.assert(
      fc.property(anyTank, (sizes) => {
        const given = asArguments(sizes);
        expect(tankFootprint.compute([...given, 0])).toBe(tankFloorArea.compute(given));
      }),
    );
  });

  test('glass below nothing is refused', () => {
    expect(tankFootprint.compute(['rectangle', 900, 445, 0, 0, -6])).toEqual({
      refused: 'Glass cannot be below zero.',
    });
  });
});
