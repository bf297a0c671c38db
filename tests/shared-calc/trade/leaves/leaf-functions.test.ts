import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { leafCountPer100g } from '#shared-calc/trade/leaves/leaf-count-per-100g.ts';
import { leafCover } from '#shared-calc/trade/leaves/leaf-cover.ts';
import { leafLayersForCover } from '#shared-calc/trade/leaves/leaf-layers-for-cover.ts';
import { leafMassForCover } from '#shared-calc/trade/leaves/leaf-mass-for-cover.ts';
import { leavesForCover } from '#shared-calc/trade/leaves/leaves-for-cover.ts';
import { litterLife } from '#shared-calc/trade/leaves/litter-life.ts';
import { litterMass } from '#shared-calc/trade/leaves/litter-mass.ts';

const FULL_COVER = 'Full cover by chance never quite happens; use 0.99, then place by hand.';

describe('leafCover', () => {
  test.each([
    [0, 0],
    [1, 0.6321],
    [3, 0.9502],
    [4.605, 0.99],
  ])('%d layers let fall by chance cover %d', (layers, cover) => {
    expect(leafCover.compute([layers])).toBeCloseTo(cover, 4);
  });

  test('layers below zero are refused', () => {
    expect(leafCover.compute([-1])).toEqual({ refused: 'Layers cannot be below zero.' });
  });
});

describe('leafLayersForCover', () => {
  test('99 % asks for 4.605 layers, nothing for none', () => {
    expect(leafLayersForCover.compute([0.99])).toBeCloseTo(4.60517, 5);
    expect(leafLayersForCover.compute([0])).toBeCloseTo(0, 12);
  });

  test('so many layers cover what they were worked for', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.999, noNaN: true }), (cover) => {
        expect(leafCover.compute([Number(leafLayersForCover.compute([cover]))])).toBeCloseTo(cover, 12);
      }),
    );
  });

  test.each([
    [1, FULL_COVER],
    [99, 'Cover is a share; 99 % is 0.99.'],
    [-0.1, 'Cover cannot be below zero.'],
  ])('a cover of %d is refused', (cover, says) => {
    expect(leafLayersForCover.compute([cover])).toEqual({ refused: says });
  });
});

describe('leavesForCover', () => {
  test('0.4005 m2 to 99 % with leaves of 18 cm2 takes 1,025 of them', () => {
    expect(leavesForCover.compute([0.4005, 0.99, 18, 80])).toBe(1025);
  });

  test('how heavy a leaf is does not change how many', () => {
    expect(leavesForCover.compute([0.4005, 0.99, 18, 190])).toBe(1025);
  });

  test.each([
    [[0.4005, 1, 18, 80], FULL_COVER],
    [[-0.4, 0.99, 18, 80], 'Area cannot be below zero.'],
    [[0.4005, 0.99, 0, 80], 'Area of a leaf must be more than zero.'],
  ])('%j is refused', (args, says) => {
    expect(leavesForCover.compute(args)).toEqual({ refused: says });
  });
});

describe('leafMassForCover', () => {
  test('0.4005 m2 to 99 % at 80 g/m2 a layer takes 147.55 g', () => {
    expect(leafMassForCover.compute([0.4005, 0.99, 80])).toBeCloseTo(147.55, 2);
  });

  test.each([
    [[0.4005, 1, 80], FULL_COVER],
    [[-0.4, 0.99, 80], 'Area cannot be below zero.'],
    [[0.4005, 0.99, -80], 'Mass of a leaf layer cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(leafMassForCover.compute(args)).toEqual({ refused: says });
  });
});

describe('litterMass', () => {
  test('30 mm on 0.4005 m2 at 12.2 g/L weighs 146.58 g', () => {
    expect(litterMass.compute([0.4005, 30, 12.2])).toBeCloseTo(146.583, 6);
  });

  test.each([
    [[-1, 30, 12.2], 'Area cannot be below zero.'],
    [[0.4, -30, 12.2], 'Depth cannot be below zero.'],
    [[0.4, 30, -12.2], 'Density cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(litterMass.compute(args)).toEqual({ refused: says });
  });
});

describe('leafCountPer100g', () => {
  test('small oak leaves of 18 cm2 and 80 g/m2: 694.4 in 100 g', () => {
    expect(leafCountPer100g.compute([18, 80])).toBeCloseTo(694.4, 1);
  });

  test.each([
    [[0, 80], 'Area of a leaf must be more than zero.'],
    [[18, 0], 'Mass of a leaf layer must be more than zero.'],
  ])('%j is refused', (args, says) => {
    expect(leafCountPer100g.compute(args)).toEqual({ refused: says });
  });
});

describe('litterLife', () => {
  test.each([
    [4.60517, 3, 0.9, 173.8],
    [6, 3, 0.69, 366.7],
    [3, 3, 0.69, 0],
    [0, 3, 0.69, 0],
  ])('from %d layers to %d at %d a year lasts %d d', (now, least, decay, days) => {
    expect(litterLife.compute([now, least, decay])).toBeCloseTo(days, 1);
  });

  test('litter that is already thinner is to be topped up now', () => {
    expect(litterLife.warn?.([2, 3, 0.69], 0)).toBe('The litter is already thinner than that; top it up now.');
    expect(litterLife.warn?.([3, 3, 0.69], 0)).toBeUndefined();
  });

  test.each([
    [[-1, 3, 0.9], 'Layers now cannot be below zero.'],
    [[5, 0, 0.9], 'Least layers must be more than zero.'],
    [[5, 3, 0], 'Decay must be more than zero.'],
  ])('%j is refused', (args, says) => {
    expect(litterLife.compute(args)).toEqual({ refused: says });
  });
});
