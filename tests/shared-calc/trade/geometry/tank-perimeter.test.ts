import { describe, expect, test } from 'vitest';
import { tankPerimeter } from '#shared-calc/trade/geometry/tank-perimeter.ts';

describe('tankPerimeter', () => {
  // Worked by hand to the digits shown.
  test.each([
    [['rectangle', 900, 445, 0, 0], 2.69],
    [['corner', 580, 580, 0, 250], 2.12669],
    [['bow', 890, 390, 70, 0], 2.57461],
    [['bow', 890, 390, 0, 0], 2.56],
    [['hexagon', 300, 300, 0, 0], 1.8],
    [['cylinder', 400, 400, 0, 0], 1.25664],
  ])('shape, length, depth, bow, return %j: %d m round', (args, around) => {
    expect(tankPerimeter.compute(args)).toBeCloseTo(around, 5);
  });

  test('the arc of a half circle is pi times its radius', () => {
    expect(tankPerimeter.compute(['bow', 600, 300, 300, 0])).toBeCloseTo(1.2 + Math.PI * 0.3, 12);
  });

  test('a tank that cannot be has no perimeter', () => {
    expect(tankPerimeter.compute(['bow', 600, 300, 301, 0])).toEqual({
      refused: 'The bow is deeper than a half circle; check the sagitta.',
    });
  });
});
