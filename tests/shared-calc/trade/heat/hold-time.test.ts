import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { holdTime } from '#shared-calc/trade/heat/hold-time.ts';

describe('holdTime', () => {
  // Worked by hand from the definition of D and z. D121 of 1 to 2 min, seen second hand; dry z 23, J. Gen. Microbiol. 101:227;
  // dry D160 of 2 min, from memory.
  test.each([
    {
      as: 'six cuts of moist spores at 118.3 degC take 17.15 min',
      figures: [6, 1.5, 121.1, 10, 118.3],
      gives: 17.15,
      digits: 2,
    },
    { as: 'twelve cuts at 115 degC take 73.33 min', figures: [12, 1.5, 121.1, 10, 115], gives: 73.33, digits: 2 },
    { as: 'one dry cut at 120 degC takes 109.7 min', figures: [1, 2, 160, 23, 120], gives: 109.7, digits: 1 },
    {
      as: 'six dry cuts at 120 degC take 658 min: a bake does not sterilise',
      figures: [6, 2, 160, 23, 120],
      gives: 658,
      digits: 0,
    },
    { as: 'no cuts take no time', figures: [0, 1.5, 121.1, 10, 118.3], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(holdTime.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'cuts below zero', figures: [-1, 1.5, 121.1, 10, 118], says: 'Ten-fold cuts cannot be below zero.' },
    {
      as: 'a time for one cut below zero',
      figures: [6, -1.5, 121.1, 10, 118],
      says: 'The time for one cut (D) cannot be below zero.',
    },
    {
      as: 'a step of zero',
      figures: [6, 1.5, 121.1, 0, 118],
      says: 'The ten-fold step (z) must be above zero; moist spores have about 10 K.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(holdTime.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    { as: 'a core 41 K away', figures: [6, 1.5, 121, 10, 80], says: 'Too far from the reference to trust.' },
    { as: 'nothing 40 K away', figures: [6, 2, 160, 23, 120], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = holdTime.compute(figures);
    expect(holdTime.warn?.(figures, typeof answer === 'number' ? answer : Number.NaN)).toBe(says);
  });

  test('a hotter core is never held longer', () => {
    fc.assert(
      fc.property(fc.integer({ min: 90, max: 130 }), fc.integer({ min: 0, max: 20 }), (core, hotter) => {
        const longer = Number(holdTime.compute([6, 1.5, 121.1, 10, core]));
        expect(holdTime.compute([6, 1.5, 121.1, 10, core + hotter])).toBeLessThanOrEqual(longer);
      }),
    );
  });
});
