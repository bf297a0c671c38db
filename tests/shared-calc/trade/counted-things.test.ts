import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { kindOfUnit, YES_NO } from '#shared-calc/quantity/kind.ts';
import { bagCount } from '#shared-calc/trade/buying/bag-count.ts';
import { brickCount } from '#shared-calc/trade/buying/brick-count.ts';
import { foamCans } from '#shared-calc/trade/media/foam-cans.ts';
import { inoculantDose } from '#shared-calc/trade/media/inoculant-dose.ts';
import { panelSealantRun } from '#shared-calc/trade/media/panel-sealant-run.ts';
import { plantCount } from '#shared-calc/trade/media/plant-count.ts';
import { sealantTubes } from '#shared-calc/trade/media/sealant-tubes.ts';
import type { TradeFunction } from '#shared-calc/trade/trade-function.ts';

/** The result kind of a function for arguments in these units. */
function kindOf(made: TradeFunction, units: readonly string[]) {
  return typeof made.gives === 'function' ? made.gives(units.map((unit) => kindOfUnit(unit))) : kindOfUnit(made.gives);
}

describe('bagCount', () => {
  test.each([
    [[16.837, 10, 0], 2],
    [[16.837, 10, 7], 1],
    [[16.837, 10, 20], 0],
    [[20, 10, 0], 2],
    [[0.3, 0.1, 0], 3],
  ])('need, pack, on hand %j: %d packs', (args, packs) => {
    expect(bagCount.compute(args)).toBe(packs);
  });

  test('packs and stock cover the need, and one pack fewer would not', () => {
    const amount = fc.integer({ min: 0, max: 100_000 });
    fc.assert(
      fc.property(amount, fc.integer({ min: 1, max: 5000 }), amount, (need, pack, onHand) => {
        const packs = Number(bagCount.compute([need, pack, onHand]));
        expect(packs * pack + onHand).toBeGreaterThanOrEqual(need);
        expect(packs === 0 || (packs - 1) * pack + onHand < need).toBe(true);
      }),
    );
  });

  test('it counts litres by litres and grams by kilograms, but not litres by grams', () => {
    const count = kindOfUnit('each');
    expect(kindOf(bagCount, ['L', 'gal', 'mL'])).toEqual(count);
    expect(kindOf(bagCount, ['g', 'kg', 'g'])).toEqual(count);
    expect(kindOf(bagCount, ['each', 'number', 'each'])).toEqual(count);
    expect(kindOf(bagCount, ['L', 'g', 'L'])).toBeUndefined();
    expect(kindOf(bagCount, ['L', 'L', 'each'])).toBeUndefined();
    expect(kindOf(bagCount, ['degC', 'degC', 'degC'])).toBeUndefined();
    expect(kindOf(bagCount, ['yes_no', 'L', 'L'])).toBeUndefined();
  });

  test.each([
    [[-1, 10, 0], 'Need cannot be below zero.'],
    [[16, 0, 0], 'Pack must be more than zero.'],
    [[16, 10, -1], 'On hand cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(bagCount.compute(args)).toEqual({ refused: says });
  });
});

describe('plantCount', () => {
  // Counts by class: common practice, no source. A tank of 0.267 m2, 600 mm back, 0.36 m2 of background.
  test.each([
    ['ground', [14, 0.267, 0], 4],
    ['mid', [14, 0.267, 0], 4],
    ['feature', [4, 0.267, 1], 2],
    ['climber', [5, 0.6, 1], 3],
    ['epiphyte', [6, 0.36, 0], 3],
    ['a whole number is not rounded past', [10, 0.3, 0], 3],
    ['the least in a small tank', [2, 0.02, 1], 1],
    ['none where there is no background', [6, 0, 0], 0],
  ])('%s', (_, args, plants) => {
    expect(plantCount.compute(args)).toBe(plants);
  });

  test('density and measure must come to a count', () => {
    const count = kindOfUnit('each');
    expect(kindOf(plantCount, ['each/m2', 'm2', 'each'])).toEqual(count);
    expect(kindOf(plantCount, ['each/m', 'mm', 'each'])).toEqual(count);
    expect(kindOf(plantCount, ['each/m2', 'mm', 'each'])).toBeUndefined();
    expect(kindOf(plantCount, ['degC', 'm2', 'each'])).toBeUndefined();
    expect(typeof plantCount.gives === 'function' && plantCount.gives([YES_NO, count, count])).toBeUndefined();
  });

  test.each([
    [[-14, 0.267, 0], 'Density cannot be below zero.'],
    [[14, -0.267, 0], 'Measure cannot be below zero.'],
    [[14, 0.267, -1], 'Least number cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(plantCount.compute(args)).toEqual({ refused: says });
  });
});

describe('brickCount', () => {
  test('13.7 L from bricks of 9 L are two, 70 L of 70 L one, none for none', () => {
    expect([brickCount.compute([13.7, 9]), brickCount.compute([70, 70]), brickCount.compute([0, 9])]).toEqual([
      2, 1, 0,
    ]);
  });

  test.each([
    [[-1, 9], 'Need cannot be below zero.'],
    [[13, 0], 'Yield must be more than zero.'],
  ])('%j is refused', (args, says) => {
    expect(brickCount.compute(args)).toEqual({ refused: says });
  });
});

describe('foamCans', () => {
  test('0.54 m2, 25 mm thick, from cans of 22 L: one; 1 m2: two', () => {
    expect([foamCans.compute([0.54, 25, 22]), foamCans.compute([1, 25, 22])]).toEqual([1, 2]);
  });

  test.each([
    [[-1, 25, 22], 'Area cannot be below zero.'],
    [[1, -25, 22], 'Thickness cannot be below zero.'],
    [[1, 25, 0], 'Yield must be more than zero.'],
  ])('%j is refused', (args, says) => {
    expect(foamCans.compute(args)).toEqual({ refused: says });
  });
});

describe('panelSealantRun', () => {
  test.each([
    [[900, 600, 80], 9.3],
    [[600, 600, 80], 6.6],
    [[900, 640, 80], 10.28],
    [[900, 60, 80], 1.92],
  ])('width, height, spacing %j mm: %d m', (args, metres) => {
    expect(panelSealantRun.compute(args)).toBeCloseTo(metres, 10);
  });

  test.each([
    [[-900, 600, 80], 'Width cannot be below zero.'],
    [[900, -600, 80], 'Height cannot be below zero.'],
    [[900, 600, 0], 'Spacing must be more than zero.'],
  ])('%j is refused', (args, says) => {
    expect(panelSealantRun.compute(args)).toEqual({ refused: says });
  });
});

describe('sealantTubes', () => {
  test.each([
    [[6, 2.69, 310, 0.15], 1],
    [[6, 9.6, 310, 0.15], 2],
    [[6, 0, 310, 0.15], 0],
  ])('bead mm, run m, tube mL, waste %j: %d', (args, tubes) => {
    expect(sealantTubes.compute(args)).toBe(tubes);
  });

  test.each([
    [[-6, 2.69, 310, 0.15], 'Bead cannot be below zero.'],
    [[6, -2.69, 310, 0.15], 'Run cannot be below zero.'],
    [[6, 2.69, 0, 0.15], 'Tube must be more than zero.'],
    [[6, 2.69, 310, -0.15], 'Waste cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(sealantTubes.compute(args)).toEqual({ refused: says });
  });

  test('waste typed as a whole number answers and is asked about', () => {
    expect(sealantTubes.warn?.([6, 2.69, 310, 15], 4)).toBe('Waste is a share; 15 % is 0.15.');
  });
});

describe('inoculantDose', () => {
  test('20.69 L at 1 g/L take 20.69 g', () => {
    expect(inoculantDose.compute([20.69, 1])).toBe(20.69);
  });

  test.each([
    [[-1, 1], 'Loose litres cannot be below zero.'],
    [[1, -1], 'Rate cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(inoculantDose.compute(args)).toEqual({ refused: says });
  });
});
