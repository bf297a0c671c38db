import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airChangesByFall } from '#shared-calc/trade/air-and-light/air-changes-by-fall.ts';
import { vapourInAir } from '#shared-calc/trade/air-and-light/vapour-in-air.ts';

describe('airChangesByFall', () => {
  // Worked from the balance of vapour, apart from the program.
  test('94 to 85 % in 20 minutes, over a rest of 80 %, is a little under one change an hour', () => {
    expect(airChangesByFall.compute([0.8, 0.94, 0.85, 20, 25, 21, 0.45])).toBeCloseTo(0.9622, 4);
  });

  test('readings made from a known air change give it back, however damp the soil is', () => {
    const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(
        between(0.2, 20),
        between(0.5, 10),
        between(1, 8),
        between(2, 30),
        (changes, feeding, warmer, minutes) => {
          const saturated = Number(vapourInAir.compute([21 + warmer, 1]));
          const room = Number(vapourInAir.compute([21, 0.45]));
          // Per m3 of tank: feeding x (saturated - air) comes, changes x (air - room) leaves.
          const rest = (feeding * saturated + changes * room) / (feeding + changes);
          const start = 0.999 * saturated;
          const airAt = (hours: number) => rest + (start - rest) * Math.exp(-hours * (feeding + changes));
          const figures = [rest, airAt(0), airAt(minutes / 60)].map((air) => air / saturated);
          fc.pre((figures[2] ?? 0) - (figures[0] ?? 0) > 1e-6);
          const found = airChangesByFall.compute([...figures, minutes, 21 + warmer, 21, 0.45]);
          expect(Number(found) / changes).toBeCloseTo(1, 6);
        },
      ),
    );
  });

  test.each([
    {
      as: 'readings that do not fall',
      figures: [0.8, 0.85, 0.94, 20, 25, 21, 0.45],
      says: 'The second reading must lie between the first and the rest.',
    },
    {
      as: 'a rest over the second reading',
      figures: [0.9, 0.94, 0.85, 20, 25, 21, 0.45],
      says: 'The second reading must lie between the first and the rest.',
    },
    { as: 'no time', figures: [0.8, 0.94, 0.85, 0, 25, 21, 0.45], says: 'The time between must be more than zero.' },
    {
      as: '80 typed for 80 %',
      figures: [80, 0.94, 0.85, 20, 25, 21, 0.45],
      says: 'The rest is a share from 0 to 1; you gave 80.',
    },
    {
      as: 'a tank drier than its room',
      figures: [0.3, 0.94, 0.85, 20, 21, 21, 0.45],
      says: 'The tank at rest must be damper than the room for this.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(airChangesByFall.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    {
      as: 'a tank that rests nearly full',
      figures: [0.96, 0.99, 0.97, 20, 25, 21, 0.45],
      says: 'Too near full to tell.',
    },
    {
      as: 'readings too close together',
      figures: [0.8, 0.94, 0.85, 5, 25, 21, 0.45],
      says: 'The hygrometer lags; wait longer.',
    },
    { as: 'nothing in a good evening', figures: [0.8, 0.94, 0.85, 20, 25, 21, 0.45], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = airChangesByFall.compute(figures);
    expect(airChangesByFall.warn?.(figures, Number(answer))).toBe(says);
  });
});
