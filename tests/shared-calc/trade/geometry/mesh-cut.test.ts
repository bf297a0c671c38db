import { describe, expect, test } from 'vitest';
import { meshCut, meshCutEntry } from '#shared-calc/trade/geometry/mesh-cut.ts';

describe('meshCut', () => {
  // Geometry, worked by hand.
  test('900 x 445 mm with 30 mm turned up is cut 960 x 505 mm, 0.505 m off the roll', () => {
    expect(meshCut({ length: 900, depth: 445, upturn: 30, roll: 1200 })).toEqual({
      length: 960,
      depth: 505,
      rollLength: 0.505,
    });
  });

  test('wider both ways than the roll it must be joined', () => {
    expect(meshCut({ length: 1500, depth: 1200, upturn: 30, roll: 1200 })).toEqual({
      length: 1560,
      depth: 1260,
      rollLength: 2.52,
      warning: 'Mesh must be joined: overlap 50 mm.',
    });
  });

  test.each([
    [{ length: 0, depth: 445, upturn: 30, roll: 1200 }, 'Length must be more than zero.'],
    [{ length: 900, depth: 445, upturn: -30, roll: 1200 }, 'Turned-up edge cannot be below zero.'],
    [{ length: 900, depth: 445, upturn: 30, roll: 40 }, 'The roll is too narrow to join; take a wider one.'],
  ])('%j is refused', (sizes, says) => {
    expect(meshCut(sizes)).toEqual({ refused: says });
  });

  test('it gives a pair of sides and so has no name in rules', () => {
    expect([meshCutEntry.name, meshCutEntry.inRules]).toEqual(['MESH_CUT', false]);
  });
});
