import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circleSegment } from '#shared-calc/trade/geometry/circle-segment.ts';

describe('circleSegment', () => {
  // Geometry, worked by hand.
  test('nothing cut off is nothing', () => {
    expect(circleSegment(200, 0)).toEqual({ area: 0, centroid: 0 });
  });

  test('a half circle has its centre 4 R / 3 pi from the cut', () => {
    const half = circleSegment(200, 200);
    expect(half.area).toBeCloseTo((Math.PI * 200 ** 2) / 2, 8);
    expect(half.centroid).toBeCloseTo((4 * 200) / (3 * Math.PI), 10);
  });

  test('a cut at the far edge takes the whole circle', () => {
    expect(circleSegment(200, 400).area).toBeCloseTo(Math.PI * 200 ** 2, 8);
  });

  test('a segment and what is left of the circle make the circle, and balance on its centre', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.02, max: 1.98, noNaN: true }), (height) => {
        const one = circleSegment(1, height);
        const other = circleSegment(1, 2 - height);
        expect(one.area + other.area).toBeCloseTo(Math.PI, 12);
        const moment = one.area * (1 - height + one.centroid) - other.area * (height - 1 + other.centroid);
        expect(moment).toBeCloseTo(0, 12);
      }),
    );
  });

  test('flat and full sums agree where they meet, and a flat segment is two thirds of chord times height', () => {
    const chord = 900;
    const at = (height: number) => circleSegment(chord ** 2 / (8 * height) + height / 2, height);
    const below = at(4.4999);
    const above = at(4.5001);
    expect(above.area / below.area).toBeCloseTo(4.5001 / 4.4999, 8);
    expect(above.centroid / below.centroid).toBeCloseTo(4.5001 / 4.4999, 7);
    expect(at(1e-6).area / ((2 / 3) * chord * 1e-6)).toBeCloseTo(1, 12);
  });
});
