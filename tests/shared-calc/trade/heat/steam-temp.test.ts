import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { steamTemp } from '#shared-calc/trade/heat/steam-temp.ts';

describe('steamTemp', () => {
  // Worked from IAPWS R7-97(2012), eq. 31, at the pressure of air and gauge together, apart from the program.
  test.each([
    { as: '15 psi at the sea is 120.955 degC', figures: [0, 103.42135939752], gives: 120.955, digits: 3 },
    { as: '15 psi at 650 m is 119.763 degC', figures: [650, 103.42135939752], gives: 119.763, digits: 3 },
    { as: '15 psi at 1,500 m is 118.263 degC', figures: [1500, 103.42135939752], gives: 118.263, digits: 3 },
    { as: 'no gauge pressure is boiling water', figures: [0, 0], gives: 99.974, digits: 3 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(steamTemp.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a vacuum beyond the formula',
      figures: [0, -101],
      says: 'No steam at 0.3 kPa: the steam formula runs from 0.611213 to 22064 kPa.',
    },
    {
      as: 'a pressure beyond the formula',
      figures: [0, 30000],
      says: 'No steam at 30101.3 kPa: the steam formula runs from 0.611213 to 22064 kPa.',
    },
    {
      as: 'a height above the air formula',
      figures: [20000, 100],
      says: 'The air formula runs from -5000 to 11000 m; you gave 20000 m.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(steamTemp.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    {
      as: 'a gauge over 110 kPa',
      figures: [0, 111],
      says: 'Above the 15 psi class of small vessels: only as the maker of the vessel says.',
    },
    { as: 'a gauge below zero', figures: [0, -10], says: 'A gauge below zero: the vessel would be under vacuum.' },
    { as: 'nothing at 110 kPa', figures: [0, 110], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = steamTemp.compute(figures);
    expect(steamTemp.warn?.(figures, typeof answer === 'number' ? answer : Number.NaN)).toBe(says);
  });

  test('the same gauge is never hotter higher up', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 4500 }), fc.integer({ min: 0, max: 500 }), (low, rise) => {
        expect(steamTemp.compute([low + rise, 100])).toBeLessThanOrEqual(Number(steamTemp.compute([low, 100])));
      }),
    );
  });
});
