import { describe, expect, test } from 'vitest';
import { insideSize } from '#shared-calc/trade/geometry/inside-size.ts';

describe('insideSize', () => {
  // Geometry, worked by hand.
  test.each([
    [[912, 2, 6, 0, 0], 900],
    [[610, 1, 6, 0, 4], 600],
    [[459, 2, 5, 1, 2], 445],
  ])('outside, panes, pane, seam, frame %j leave %d mm', (args, inside) => {
    expect(insideSize.compute(args)).toBe(inside);
    expect(insideSize.warn?.(args, inside)).toBeUndefined();
  });

  test('an inside of less than 100 mm answers and asks', () => {
    expect(insideSize.compute([100, 2, 6, 0, 0])).toBe(88);
    expect(insideSize.warn?.([100, 2, 6, 0, 0], 88)).toBe('Inside size is only 88 mm; is this already an inside size?');
    expect(insideSize.warn?.([112, 2, 6, 0, 0], 100)).toBeUndefined();
  });

  test.each([
    [[12, 2, 6, 0, 0], 'Glass and frame take 12 mm of 12 mm; nothing is left inside.'],
    [[-912, 2, 6, 0, 0], 'Outside size cannot be below zero.'],
    [[912, 2, -6, 0, 0], 'Pane cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(insideSize.compute(args)).toEqual({ refused: says });
  });
});
