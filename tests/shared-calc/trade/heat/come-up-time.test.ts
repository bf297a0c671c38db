import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { comeUpTime } from '#shared-calc/trade/heat/come-up-time.ts';

describe('comeUpTime', () => {
  // Worked by hand from the sum; the minutes a tenfold takes are from memory.
  test.each([
    {
      as: 'a bag in steam at 100 degC is at 82 after 9.53 min',
      figures: [12, 1.4, 100, 20, 82],
      gives: 9.53,
      digits: 2,
    },
    {
      as: 'a deep tray at 105 degC is at 90 after 22.49 min',
      figures: [25, 1.4, 105, 20, 90],
      gives: 22.49,
      digits: 2,
    },
    { as: 'a core that is there takes no time', figures: [12, 1.4, 100, 82, 82], gives: 0, digits: 12 },
    { as: 'a core that is hotter takes no time', figures: [12, 1.4, 100, 120, 82], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(comeUpTime.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a target at the heat',
      figures: [12, 1.4, 90, 20, 90],
      says: 'The core can never reach 90 C in a medium at 90 C.',
    },
    {
      as: 'a target above the heat',
      figures: [25, 1.4, 85.5, 20, 90],
      says: 'The core can never reach 90 C in a medium at 85.5 C.',
    },
    {
      as: 'a heating time below zero',
      figures: [-1, 1.4, 100, 20, 82],
      says: 'The heating time (f) cannot be below zero.',
    },
    { as: 'no lag', figures: [12, 0, 100, 20, 82], says: 'The lag (j) must be more than zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(comeUpTime.compute(figures)).toEqual({ refused: says });
  });

  test('a colder start never shortens it', () => {
    fc.assert(
      fc.property(fc.integer({ min: -10, max: 110 }), fc.integer({ min: 0, max: 60 }), (start, colder) => {
        const sooner = Number(comeUpTime.compute([25, 1.4, 105, start, 90]));
        expect(comeUpTime.compute([25, 1.4, 105, start - colder, 90])).toBeGreaterThanOrEqual(sooner);
      }),
    );
  });
});
