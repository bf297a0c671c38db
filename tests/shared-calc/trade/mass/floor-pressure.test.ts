import { describe, expect, test } from 'vitest';
import { floorPressure } from '#shared-calc/trade/mass/floor-pressure.ts';

describe('floorPressure', () => {
  // Worked by hand with standard gravity; 40 lb/ft2 is of IRC Table R301.5.
  test.each([
    { as: '83.16 kg on 912 x 457 mm press with 1.957 kN/m2', figures: [83.16, 0.416784], gives: 1.957, digits: 3 },
    { as: 'nothing presses with nothing', figures: [0, 0.4], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(floorPressure.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'a mass below zero', figures: [-1, 0.4], says: 'Mass cannot be below zero.' },
    { as: 'no area', figures: [83, 0], says: 'Area must be more than zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(floorPressure.compute(figures)).toEqual({ refused: says });
  });
});
