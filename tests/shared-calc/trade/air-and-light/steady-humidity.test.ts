import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { steadyHumidity } from '#shared-calc/trade/air-and-light/steady-humidity.ts';
import { vapourInAir } from '#shared-calc/trade/air-and-light/vapour-in-air.ts';

describe('steadyHumidity', () => {
  // Worked from the balance of moisture, apart from the program.
  test.each([
    { as: 'T07 in the light, before the next misting', figures: [0.27, 1.32, 0, 25.4, 21, 0.45, 1.143], gives: 88.376 },
    { as: 'the same with no glass to fog', figures: [0.27, 1.32, 0, 25.4, 21, 0.45, 0], gives: 88.962 },
    { as: 'more room air than damp', figures: [3.6, 1.32, 94.5, 23.2, 21, 0.45, 1.143], gives: 59.686 },
    { as: 'more mist than leaves: full', figures: [0.1, 1.3, 200, 21, 21, 0.45, 1], gives: 100 },
    { as: 'no air and nothing damp: as it is shut', figures: [0, 0, 0, 21, 21, 0.45, 1], gives: 100 },
    { as: 'no damp: as dry as the room', figures: [1, 0, 0, 21, 21, 0.45, 0], gives: 45 },
  ])('$as: $gives %', ({ figures, gives }) => {
    expect(Number(steadyHumidity.compute(figures)) * 100).toBeCloseTo(gives, 3);
  });

  const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
  const tank = fc.tuple(
    between(0.001, 50),
    between(0.001, 20),
    between(0, 500),
    between(0, 10),
    between(5, 30),
    between(0, 1),
    between(0, 3),
  );
  const humidityOf = ([flow, damp, wetting, warmer, room, humidity, glass]: readonly number[]) =>
    Number(
      steadyHumidity.compute([
        flow ?? 0,
        damp ?? 0,
        wetting ?? 0,
        (room ?? 0) + (warmer ?? 0),
        room ?? 0,
        humidity ?? 0,
        glass ?? 0,
      ]),
    );

  test('it lies between the vapour of the room and full air, wherever the tank is no colder than its room', () => {
    fc.assert(
      fc.property(tank, (given) => {
        const [, , , warmer, room, humidity] = given;
        const dried = Number(vapourInAir.compute([room, humidity])) / Number(vapourInAir.compute([room + warmer, 1]));
        const found = humidityOf(given);
        expect(found).toBeGreaterThanOrEqual(dried - 1e-12);
        expect(found).toBeLessThanOrEqual(1);
      }),
    );
  });

  test('it takes no jump where the glass begins to fog', () => {
    fc.assert(
      fc.property(tank, (given) => {
        const [flow, damp, ...rest] = given;
        expect(Math.abs(humidityOf([flow, damp * (1 + 1e-6), ...rest]) - humidityOf(given))).toBeLessThan(1e-5);
      }),
    );
  });

  test.each([
    { as: 'a flow below 0', figures: [-1, 1, 0, 24, 21, 0.45, 1], says: 'Air flow cannot be below zero.' },
    { as: 'damp below 0', figures: [1, -1, 0, 24, 21, 0.45, 1], says: 'The damp passage cannot be below zero.' },
    { as: 'wetting below 0', figures: [1, 1, -1, 24, 21, 0.45, 1], says: 'Wetting cannot be below zero.' },
    { as: 'glass below 0', figures: [1, 1, 0, 24, 21, 0.45, -1], says: 'Glass cannot be below zero.' },
    {
      as: '45 typed for 45 %',
      figures: [1, 1, 0, 24, 21, 45, 1],
      says: 'Room humidity is a share from 0 to 1; you gave 45.',
    },
    {
      as: 'a tank colder than any',
      figures: [1, 1, 0, -120, 21, 0.45, 1],
      says: 'The vapour formula needs air above -100 C.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(steadyHumidity.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    {
      as: 'a tank that is full',
      figures: [0.1, 1.3, 200, 21, 21, 0.45, 1],
      says: 'Full: the rest of the mist drips through.',
    },
    {
      as: 'glass that fogs',
      figures: [0.27, 1.32, 0, 25.4, 21, 0.45, 1.143],
      says: 'The glass fogs and holds the air at this.',
    },
    { as: 'a tank as dry as a desert', figures: [5, 0.1, 0, 23, 21, 0.25, 1], says: 'Drier than a heated room.' },
    { as: 'nothing at 60 %', figures: [3.6, 1.32, 94.5, 23.2, 21, 0.45, 1.143], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = steadyHumidity.compute(figures);
    expect(steadyHumidity.warn?.(figures, Number(answer))).toBe(says);
  });
});
