import { describe, expect, test } from 'vitest';
import { panelRun } from '#shared-calc/trade/geometry/panel-run.ts';

describe('panelRun', () => {
  // Geometry, worked by hand.
  test.each([
    [
      ['rectangle', 900, 445, 0],
      [0, 900, 1345, 1790],
    ],
    [
      ['bow', 890, 390, 0],
      [0, 890, 1280, 1670],
    ],
    [
      ['corner', 580, 580, 250],
      [0, 1160, 1410, 1660],
    ],
    [
      ['hexagon', 300, 300, 0],
      [0, 300, 600, 900],
    ],
    [
      ['cylinder', 400, 400, 0],
      [0, 0, 0, 0],
    ],
  ])('shape, length, depth, return %j: no wall, the back, a side more, both sides: %j mm', (tank, runs) => {
    expect([0, 1, 2, 3].map((walls) => panelRun.compute([...tank, walls]))).toEqual(runs);
  });

  test.each([[-1], [1.5], [4]])('%d walls is no background', (walls) => {
    expect(panelRun.compute(['rectangle', 900, 445, 0, walls])).toEqual({
      refused: 'Walls are 0 for none, 1 for the back, 2 for back and one side, 3 for back and sides.',
    });
  });

  test('a return as long as the side is refused', () => {
    expect(panelRun.compute(['corner', 580, 580, 580, 1])).toEqual({
      refused: 'The side return must be shorter than the side.',
    });
  });
});
