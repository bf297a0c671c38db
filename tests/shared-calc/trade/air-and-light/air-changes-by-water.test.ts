import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airChangesByWater } from '#shared-calc/trade/air-and-light/air-changes-by-water.ts';
import { vapourLoss } from '#shared-calc/trade/air-and-light/vapour-loss.ts';

describe('airChangesByWater', () => {
  test('49.06 mL a day out of 180 L of air at 90 % is one change an hour', () => {
    expect(airChangesByWater.compute([0.180225, 49.06, 24, 0.9, 21, 0.45])).toBeCloseTo(1.00006, 5);
  });

  test('it gives back the air changes that vapour_loss was worked from', () => {
    const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
    fc.assert(
      fc.property(
        between(0.01, 2),
        between(0.01, 60),
        between(0, 10),
        between(0.5, 1),
        (air, changes, warmer, humidity) => {
          const airs = [21 + warmer, humidity, 21, 0.4];
          const loss = Number(vapourLoss.compute([air, changes, ...airs]));
          expect(Number(airChangesByWater.compute([air, loss, ...airs])) / changes).toBeCloseTo(1, 9);
        },
      ),
    );
  });

  test.each([
    { as: 'no air', figures: [0, 49, 24, 0.9, 21, 0.45], says: 'Air must be more than zero.' },
    {
      as: 'more drained than misted',
      figures: [0.18, -1, 24, 0.9, 21, 0.45],
      says: 'The water lost cannot be below zero.',
    },
    {
      as: 'a tank no damper than its room',
      figures: [0.18, 49, 21, 0.45, 21, 0.45],
      says: 'The tank must be damper than the room for this.',
    },
    {
      as: '90 typed for 90 %',
      figures: [0.18, 49, 24, 90, 21, 0.45],
      says: 'Humidity is a share from 0 to 1; you gave 90.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(airChangesByWater.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    { as: 'airs that are nearly alike', figures: [0.18, 49, 21, 0.5, 21, 0.45], says: 'Too alike to tell.' },
    { as: 'nothing in a damp tank', figures: [0.18, 49, 24, 0.9, 21, 0.45], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = airChangesByWater.compute(figures);
    expect(airChangesByWater.warn?.(figures, Number(answer))).toBe(says);
  });
});
