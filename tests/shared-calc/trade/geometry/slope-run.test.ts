import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { slopeRun } from '#shared-calc/trade/geometry/slope-run.ts';
import { floorOf } from '#shared-calc/trade/geometry/tank-floor.ts';
import { anyTank, asArguments } from './any-tank.ts';

describe('slopeRun', () => {
  test.each([
    ['a rectangle slopes over its depth', ['rectangle', 900, 445, 0, 0], 445],
    ['a bow slopes to its front', ['bow', 890, 390, 70, 0], 460],
    ['a corner tank slopes along its diagonal', ['corner', 580, 580, 0, 250], 586.9],
    ['a hexagon slopes from side to side', ['hexagon', 300, 300, 0, 0], 519.615],
    ['a cylinder slopes over its diameter', ['cylinder', 400, 400, 0, 0], 400],
  ])('%s', (_, args, mm) => {
    expect(slopeRun.compute(args)).toBeCloseTo(mm, 2);
  });

  test('it is the run that the soil is worked over', () => {
    fc.assert(
      fc.property(anyTank, (sizes) => {
        expect(slopeRun.compute(asArguments(sizes))).toBe(floorOf(sizes).run);
      }),
    );
  });

  test.each([
    { as: 'a side of no length', figures: ['corner', 0, 580, 0, 0], says: 'Side must be more than zero.' },
    {
      as: 'a return longer than its side',
      figures: ['corner', 580, 580, 0, 600],
      says: 'The side return must be shorter than the side.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(slopeRun.compute(figures)).toEqual({ refused: says });
  });
});
