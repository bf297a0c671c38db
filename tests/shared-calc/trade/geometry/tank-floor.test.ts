import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { floorOf } from '#shared-calc/trade/geometry/tank-floor.ts';
import { anyTank } from './any-tank.ts';
import { cutBehind, measureOutline, outlineOf } from './floor-outline.ts';

describe('floorOf', () => {
  // Geometry, worked by hand.
  test('area, edge and centre are those of the outline drawn on paper', () => {
    fc.assert(
      fc.property(anyTank, (sizes) => {
        const floor = floorOf(sizes);
        const drawn = measureOutline(outlineOf(sizes));
        expect(floor.area / drawn.area).toBeCloseTo(1, 5);
        expect(floor.perimeter / drawn.around).toBeCloseTo(1, 5);
        expect(floor.centroid).toBeCloseTo(drawn.centreY / floor.run, 5);
      }),
    );
  });

  test('the run reaches from the back to the foremost point', () => {
    fc.assert(
      fc.property(anyTank, (sizes) => {
        const foremost = Math.max(...outlineOf(sizes).map((point) => point.y));
        expect(floorOf(sizes).run / foremost).toBeCloseTo(1, 6);
      }),
    );
  });

  test('a front strip is what a cut across the outline leaves in front', () => {
    fc.assert(
      fc.property(anyTank, fc.double({ min: 0, max: 1, noNaN: true }), (sizes, share) => {
        const floor = floorOf(sizes);
        const strip = share * floor.run;
        const drawn = measureOutline(cutBehind(outlineOf(sizes), floor.run - strip)).area;
        expect(floor.strip(strip) / floor.area).toBeCloseTo(drawn / floor.area, 5);
      }),
    );
  });

  test('a strip as deep as the run is the whole floor', () => {
    fc.assert(
      fc.property(anyTank, (sizes) => {
        const floor = floorOf(sizes);
        expect(floor.strip(floor.run) / floor.area).toBeCloseTo(1, 10);
      }),
    );
  });

  test('the centre is in the middle of a rectangle, hexagon and cylinder, behind it in a bow, before it in a corner', () => {
    const sides = { rectangle: [0], hexagon: [0], cylinder: [0], bow: [0, -1], corner: [1] };
    fc.assert(
      fc.property(anyTank, (sizes) => {
        const beforeMiddle = floorOf(sizes).centroid - 0.5;
        expect(sides[sizes.shape]).toContain(Math.abs(beforeMiddle) < 1e-12 ? 0 : Math.sign(beforeMiddle));
      }),
    );
  });
});
