import { describe, expect, test } from 'vitest';
import { damRoom } from '#shared-calc/trade/geometry/dam-room.ts';

describe('damRoom', () => {
  // Geometry, worked by hand; 40 mm for plants is common practice, no source.
  test.each([
    [[150, 40, 0, 10, 10], 90, undefined],
    [[100, 40, 0, 10, 10], 40, undefined],
    [[75, 40, 0, 10, 10], 15, 'Only 15 mm of soil at the front; most plants need 40 or more.'],
    [[60, 40, 0, 10, 10], 0, 'Only 0 mm of soil at the front; most plants need 40 or more.'],
    [[60, 50, 1.5, 10, 10], -11.5, 'Layers are 11.5 mm higher than the dam. Thin the drainage or capping.'],
  ])('dam, drainage, mesh, capping, lip clearance %j leave %d mm: %s', (args, room, says) => {
    expect(damRoom.compute(args)).toBe(room);
    expect(damRoom.warn?.(args, room)).toBe(says);
  });

  test.each([
    [[-150, 40, 0, 10, 10], 'Dam cannot be below zero.'],
    [[150, -40, 0, 10, 10], 'Drainage cannot be below zero.'],
    [[150, 40, -1, 10, 10], 'Mesh cannot be below zero.'],
    [[150, 40, 0, -10, 10], 'Capping cannot be below zero.'],
    [[150, 40, 0, 10, -10], 'Lip clearance cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(damRoom.compute(args)).toEqual({ refused: says });
  });
});
