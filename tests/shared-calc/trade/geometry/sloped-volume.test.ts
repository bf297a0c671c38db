import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layerVolume } from '#shared-calc/trade/geometry/layer-volume.ts';
import { slopedVolume } from '#shared-calc/trade/geometry/sloped-volume.ts';
import { floorOf } from '#shared-calc/trade/geometry/tank-floor.ts';
import { tankFloorArea } from '#shared-calc/trade/geometry/tank-floor-area.ts';
import { anyTank, asArguments } from './any-tank.ts';
import { cutBehind, measureOutline, outlineOf } from './floor-outline.ts';

const depth = fc.double({ min: 0, max: 300, noNaN: true });

describe('slopedVolume', () => {
  // Worked by hand to the digits shown.
  test.each([
    ['a rectangle takes half the rise', ['rectangle', 900, 445, 0, 0, 90, 40], 44.055],
    ['a corner tank takes 0.385 of it', ['corner', 580, 580, 0, 250, 80, 60], 29.068],
    ['a hexagon takes half the rise', ['hexagon', 300, 300, 0, 0, 70, 40], 0.2338269 * 90],
    ['a cylinder takes half the rise', ['cylinder', 400, 400, 0, 0, 80, 40], 0.1256637 * 100],
  ])('%s', (_, args, litres) => {
    expect(slopedVolume.compute(args)).toBeCloseTo(litres, 3);
  });

  test('without a rise it is an even layer', () => {
    fc.assert(
      fc.property(anyTank, depth, (sizes, front) => {
        const given = asArguments(sizes);
        const even = layerVolume.compute([Number(tankFloorArea.compute(given)), front]);
        expect(slopedVolume.compute([...given, front, 0])).toBe(even);
      }),
    );
  });

  test('it is what slices from back to front add up to', () => {
    fc.assert(
      fc.property(anyTank, depth, depth, (sizes, front, rise) => {
        const { run } = floorOf(sizes);
        const outline = outlineOf(sizes);
        const slices = 40;
        let litres = 0;
        let before = measureOutline(outline).area;
        for (let at = 1; at <= slices; at += 1) {
          const after = at === slices ? 0 : measureOutline(cutBehind(outline, (run * at) / slices)).area;
          litres += ((before - after) / 1e6) * (front + rise * (1 - (at - 0.5) / slices));
          before = after;
        }
        expect(Math.abs(Number(slopedVolume.compute([...asArguments(sizes), front, rise])) - litres)).toBeLessThan(
          0.001 * litres + 0.001,
        );
      }),
      { numRuns: 60 },
    );
  });

  test('a slope steeper than damp mix holds is warned of, along the diagonal of a corner tank', () => {
    const says = 'Slope steeper than damp mix holds; add a terrace.';
    const warned = (args: readonly (string | number)[]) => slopedVolume.warn?.(args, 1);
    expect(warned(['rectangle', 600, 400, 0, 0, 90, 220])).toBeUndefined();
    expect(warned(['rectangle', 600, 400, 0, 0, 90, 221])).toBe(says);
    expect(warned(['corner', 580, 580, 0, 250, 90, 322])).toBeUndefined();
    expect(warned(['corner', 580, 580, 0, 250, 90, 323])).toBe(says);
  });

  test.each([
    [
      ['rectangle', 900, 445, 0, 0, -15, 40],
      'The soil at the front is 15 mm below the capping. Thin the drainage or capping.',
    ],
    [['rectangle', 900, 445, 0, 0, 90, -1], 'Rise cannot be below zero.'],
    [['corner', 580, 580, 0, 600, 90, 40], 'The side return must be shorter than the side.'],
  ])('%j is refused', (args, says) => {
    expect(slopedVolume.compute(args)).toEqual({ refused: says });
  });
});
