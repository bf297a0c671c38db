import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { panelDisplacement } from '#shared-calc/trade/geometry/panel-displacement.ts';
import { panelRun } from '#shared-calc/trade/geometry/panel-run.ts';
import { floorOf } from '#shared-calc/trade/geometry/tank-floor.ts';
import { anyTank, asArguments } from './any-tank.ts';

describe('panelDisplacement', () => {
  // Worked by hand: thickness x width x mean depth of each wall.
  test.each([
    ['back and sides of a rectangle', ['rectangle', 900, 445, 0, 0, 3, 20, 90, 40], 4.298],
    ['the back of a rectangle, deepest there', ['rectangle', 900, 445, 0, 0, 1, 20, 90, 40], 2.34],
    ['two backs and two returns of a corner tank', ['corner', 580, 580, 0, 250, 3, 20, 80, 40], 3.32],
    ['the back of a hexagon', ['hexagon', 300, 300, 0, 0, 1, 20, 70, 40], 0.66],
    ['a cylinder has no flat wall', ['cylinder', 400, 400, 0, 0, 3, 20, 70, 40], 0],
    ['no wall, no soil displaced', ['rectangle', 900, 445, 0, 0, 0, 20, 90, 40], 0],
  ])('%s', (_, args, litres) => {
    expect(panelDisplacement.compute(args)).toBeCloseTo(litres, 3);
  });

  const walls = fc.constantFrom(0, 1, 2, 3);
  const mm = fc.integer({ min: 0, max: 300_000 }).map((thousandths) => thousandths / 1000);

  test('in flat soil it is the width of the background, its thickness and the depth', () => {
    fc.assert(
      fc.property(anyTank, walls, mm, mm, (sizes, count, thickness, front) => {
        const [shape, length, depth, , sideReturn] = asArguments(sizes);
        const width = Number(panelRun.compute([shape, length, depth, sideReturn, count]));
        const given = [...asArguments(sizes), count, thickness, front, 0];
        expect(panelDisplacement.compute(given)).toBeCloseTo((width * thickness * front) / 1e6, 6);
      }),
    );
  });

  test('three walls of a rectangle are its back and both sides', () => {
    fc.assert(
      fc.property(mm, mm, mm, (thickness, front, rise) => {
        const of = (count: number) =>
          Number(panelDisplacement.compute(['rectangle', 900, 445, 0, 0, count, thickness, front, rise]));
        expect(of(3)).toBeCloseTo(of(1) + 2 * (of(2) - of(1)), 6);
      }),
    );
  });

  test('a side lies as deep as the soil at its middle, in every shape', () => {
    fc.assert(
      fc.property(anyTank, mm, mm, (sizes, front, rise) => {
        const { back, side, backHeight, sideHeight } = floorOf(sizes);
        for (const height of [backHeight, sideHeight]) {
          expect(height).toBeGreaterThanOrEqual(0);
          expect(height).toBeLessThanOrEqual(1);
        }
        const deepest = ((2 * side + back) * (front + rise)) / 1e6;
        const litres = panelDisplacement.compute([...asArguments(sizes), 3, 1, front, rise]);
        expect(Number(litres)).toBeLessThanOrEqual(deepest + 1e-9);
      }),
    );
  });

  test.each([
    {
      as: 'four walls',
      figures: ['rectangle', 900, 445, 0, 0, 4, 20, 90, 40],
      says: 'Walls are 0 for none, 1 for the back, 2 for back and one side, 3 for back and sides.',
    },
    {
      as: 'soil below the capping',
      figures: ['rectangle', 900, 445, 0, 0, 3, 20, -15, 40],
      says: 'The soil at the front is 15 mm below the capping. Thin the drainage or capping.',
    },
    {
      as: 'soil that falls to the back',
      figures: ['rectangle', 900, 445, 0, 0, 3, 20, 90, -1],
      says: 'Rise cannot be below zero.',
    },
    {
      as: 'a thickness below 0',
      figures: ['rectangle', 900, 445, 0, 0, 3, -20, 90, 40],
      says: 'Thickness cannot be below zero.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(panelDisplacement.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    {
      as: 'a background 61 mm thick',
      figures: ['rectangle', 900, 445, 0, 0, 3, 61, 90, 40],
      says: 'Thicker than backgrounds are; check it.',
    },
    { as: 'nothing at 60 mm', figures: ['rectangle', 900, 445, 0, 0, 3, 60, 90, 40], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = panelDisplacement.compute(figures);
    expect(panelDisplacement.warn?.(figures, Number(answer))).toBe(says);
  });
});
