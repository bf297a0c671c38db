import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airPressure } from '#shared-calc/trade/heat/air-pressure.ts';

describe('airPressure', () => {
  // Worked by hand from the formula of ISO 2533, ICAO Doc 7488 and the US standard atmosphere 1976.
  test.each([
    { as: 'air at 650 m presses with 93.756 kPa', figures: [650], gives: 93.756, digits: 3 },
    { as: 'air at 1,500 m presses with 84.556 kPa', figures: [1500], gives: 84.556, digits: 3 },
    { as: 'air at the sea presses with 101.325 kPa', figures: [0], gives: 101.325, digits: 9 },
    { as: 'below the sea it presses more', figures: [-400], gives: 106.223, digits: 3 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(airPressure.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a height above the formula',
      figures: [12000],
      says: 'The air formula runs from -5000 to 11000 m; you gave 12000 m.',
    },
    {
      as: 'a depth below the formula',
      figures: [-6000],
      says: 'The air formula runs from -5000 to 11000 m; you gave -6000 m.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(airPressure.compute(figures)).toEqual({ refused: says });
  });

  test('higher up the air never presses more', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 5000 }), fc.integer({ min: 0, max: 500 }), (low, rise) => {
        expect(airPressure.compute([low + rise])).toBeLessThanOrEqual(Number(airPressure.compute([low])));
      }),
    );
  });
});
