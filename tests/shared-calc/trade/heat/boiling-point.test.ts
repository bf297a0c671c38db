import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { steamTemp } from '#shared-calc/trade/heat/steam-temp.ts';
import { boilingPoint } from '#shared-calc/trade/heat/boiling-point.ts';

describe('boilingPoint', () => {
  // Worked from IAPWS R7-97(2012), eq. 31, apart from the program.
  test.each([
    { as: 'water boils at 99.974 degC at the sea', figures: [0], gives: 99.974, digits: 3 },
    { as: 'water boils at 97.81 degC at 650 m', figures: [650], gives: 97.81, digits: 2 },
    { as: 'water boils at 95.0 degC at 1,500 m', figures: [1500], gives: 95.0, digits: 1 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(boilingPoint.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a height above the air formula',
      figures: [11001],
      says: 'The air formula runs from -5000 to 11000 m; you gave 11001 m.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(boilingPoint.compute(figures)).toEqual({ refused: says });
  });

  test('water boils as steam at no gauge', () => {
    fc.assert(
      fc.property(fc.double({ min: -400, max: 5000, noNaN: true }), (altitude) => {
        expect(boilingPoint.compute([altitude])).toBe(steamTemp.compute([altitude, 0]));
      }),
    );
  });
});
