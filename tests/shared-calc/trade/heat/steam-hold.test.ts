import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { steamHold } from '#shared-calc/trade/heat/steam-hold.ts';

describe('steamHold', () => {
  // 30 min at 121 degC: CDC Guideline for Disinfection and Sterilization in Healthcare Facilities 2008, Table 7; the rest
  // worked by hand from the definition of z.
  test.each([
    {
      as: 'in Brackenlume (650 m) the core is held 50.22 min at 15 psi',
      figures: [650, 103.42135939752],
      gives: 50.22,
      digits: 2,
    },
    { as: 'at the sea it is held 38.16 min', figures: [0, 103.42135939752], gives: 38.16, digits: 2 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(steamHold.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a height above the air formula',
      figures: [20000, 100],
      says: 'The air formula runs from -5000 to 11000 m; you gave 20000 m.',
    },
    {
      as: 'a core below 115 degC',
      figures: [650, 0],
      says: 'The core reaches 96.8 degC; sterile asks for 115 (15 psi at this height gives 118.8; the least here is 11.8 psi).',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(steamHold.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    {
      as: 'a gauge over 110 kPa',
      figures: [650, 120],
      says: 'Above the 15 psi class of small vessels: only as the maker of the vessel says.',
    },
    { as: 'nothing at 15 psi', figures: [650, 103.42135939752], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = steamHold.compute(figures);
    expect(steamHold.warn?.(figures, typeof answer === 'number' ? answer : Number.NaN)).toBe(says);
  });

  test('higher up the hold is never shorter', () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 1900 }), fc.integer({ min: 0, max: 500 }), (low, rise) => {
        expect(steamHold.compute([low + rise, 100])).toBeGreaterThanOrEqual(Number(steamHold.compute([low, 100])));
      }),
    );
  });
});
