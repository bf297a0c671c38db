import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { frontStripArea } from '#shared-calc/trade/geometry/front-strip-area.ts';
import { tankFloorArea } from '#shared-calc/trade/geometry/tank-floor-area.ts';
import { anyTank, asArguments } from './any-tank.ts';

const root3 = Math.sqrt(3);

describe('frontStripArea', () => {
  // Geometry, worked by hand.
  test.each([
    ['a strip across a rectangle', ['rectangle', 900, 445, 0, 0, 25], 0.025 * 0.9],
    ['a bow to the end of its bow', ['bow', 890, 390, 70, 0, 70], 0.04173816],
    ['a bow past its bow', ['bow', 890, 390, 70, 0, 95], 0.04173816 + 0.025 * 0.89],
    ['a corner tank along its cut edge', ['corner', 580, 580, 0, 250, 25], 0.025 * (0.33 * Math.SQRT2 + 0.025)],
    ['a hexagon from its front side', ['hexagon', 300, 300, 0, 0, 25], 0.025 * (0.3 + 0.025 / root3)],
    ['a hexagon to its widest', ['hexagon', 300, 300, 0, 0, 150 * root3], 0.1169134],
    ['a cylinder to its middle', ['cylinder', 400, 400, 0, 0, 200], Math.PI * 0.02],
  ])('%s', (_, args, area) => {
    expect(frontStripArea.compute(args)).toBeCloseTo(area, 7);
  });

  test('a strip deeper than the tank is the whole floor, and no strip is nothing', () => {
    fc.assert(
      fc.property(anyTank, (sizes) => {
        const given = asArguments(sizes);
        const floor = tankFloorArea.compute(given);
        expect(Number(frontStripArea.compute([...given, 9999])) / Number(floor)).toBeCloseTo(1, 10);
        expect(frontStripArea.compute([...given, 0])).toBeCloseTo(0, 10);
      }),
    );
  });

  test('a deeper strip is never less open', () => {
    const strip = fc.double({ min: 0, max: 4000, noNaN: true });
    fc.assert(
      fc.property(anyTank, strip, strip, (sizes, one, other) => {
        const given = asArguments(sizes);
        const lesser = Number(frontStripArea.compute([...given, Math.min(one, other)]));
        expect(Number(frontStripArea.compute([...given, Math.max(one, other)]))).toBeGreaterThanOrEqual(lesser - 1e-12);
      }),
    );
  });

  test('a strip below nothing is refused', () => {
    expect(frontStripArea.compute(['rectangle', 900, 445, 0, 0, -1])).toEqual({
      refused: 'Strip cannot be below zero.',
    });
  });
});
