import { describe, expect, test } from 'vitest';
import { meshRollLength } from '#shared-calc/trade/geometry/mesh-roll-length.ts';

describe('meshRollLength', () => {
  // Geometry, worked by hand; the overlap is common practice, no source.
  test.each([
    ['the longer side fits the roll', [960, 505, 1200], 0.505],
    ['it fits exactly', [1200, 505, 1200], 0.505],
    ['it does not fit', [1260, 660, 1200], 1.26],
    ['laid the other way round', [505, 960, 1200], 0.505],
  ])('%s', (_, args, metres) => {
    expect(meshRollLength.compute(args)).toBe(metres);
    expect(meshRollLength.warn?.(args, metres)).toBeUndefined();
  });

  // Two strips of 1200 mm lie 50 mm over each other and cover 2350 mm.
  test.each([
    [[1560, 1260, 1200], 2.52],
    [[2350, 1260, 1200], 2.52],
    [[2360, 1260, 1200], 3.78],
  ])('%j must be joined', (args, metres) => {
    expect(meshRollLength.compute(args)).toBe(metres);
    expect(meshRollLength.warn?.(args, metres)).toBe('Mesh must be joined: overlap 50 mm.');
  });

  test.each([
    [[-960, 505, 1200], 'Length cannot be below zero.'],
    [[960, -505, 1200], 'Depth cannot be below zero.'],
    [[960, 505, 0], 'Roll width must be more than zero.'],
    [[960, 505, 50], 'The roll is too narrow to join; take a wider one.'],
  ])('%j is refused', (args, says) => {
    expect(meshRollLength.compute(args)).toEqual({ refused: says });
  });
});
