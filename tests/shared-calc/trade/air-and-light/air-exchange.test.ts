import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { airExchange } from '#shared-calc/trade/air-and-light/air-exchange.ts';

describe('airExchange', () => {
  // Calculated by hand and by a second program, from the formulas that the function states.
  test.each([
    {
      as: 'a 25 mm strip over tight doors: air rises between them',
      figures: [0.00927, 25, 0.00027, 450, 23.2, 21, 0.45],
      gives: 0.27203,
    },
    {
      as: 'a 200 mm strip: air goes up and down through it',
      figures: [0.07227, 200, 0.00027, 450, 23.2, 21, 0.45],
      gives: 3.42803,
    },
    {
      as: 'a vent under the doors and a strip: air rises through both',
      figures: [0.00927, 25, 0.00315, 305, 23.8, 21, 0.45],
      gives: 1.96291,
    },
    {
      as: 'air colder than its room stays in, but for the draught',
      figures: [0.00927, 25, 0, 450, 18, 23, 0.45],
      gives: 0.08343,
    },
  ])('$as: $gives m3/h', ({ figures, gives }) => {
    expect(Number(airExchange.compute(figures)) / gives).toBeCloseTo(1, 4);
  });

  test('without any opening nothing comes in', () => {
    expect(airExchange.compute([0, 0, 0, 450, 24, 21, 0.45])).toBe(0);
  });

  const share = fc.double({ min: 0, max: 1, noNaN: true });
  const opening = fc.double({ min: 0, max: 0.5, noNaN: true });
  const between = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });

  test('a wider strip, a larger vent or a warmer tank never brings less air', () => {
    fc.assert(
      fc.property(
        fc.tuple(opening, between(0, 600), opening, between(50, 1000), between(0, 15), between(5, 30), share),
        fc.constantFrom(0, 1, 2, 4),
        between(0, 1),
        ([top, slit, low, height, warmer, room, humidity], which, more) => {
          const damper = room + warmer + 10;
          const given = [top, slit, low, height, damper, room, humidity];
          // The air formula ends at 100 degC.
          const by = which === 4 ? Math.min(more, 99 / damper - 1) : more;
          const larger = given.map((figure, at) => (at === which ? figure * (1 + by) : figure));
          const [less, most] = [given, larger].map((each) => Number(airExchange.compute(each)));
          expect(most).toBeGreaterThanOrEqual(Number(less) - 1e-12);
        },
      ),
    );
  });

  test.each([
    {
      as: 'an opening below 0',
      figures: [-0.1, 25, 0, 450, 23, 21, 0.45],
      says: 'The top opening cannot be below zero.',
    },
    { as: 'a strip below 0', figures: [0.1, -25, 0, 450, 23, 21, 0.45], says: 'The strip cannot be below zero.' },
    {
      as: 'a vent below 0',
      figures: [0.1, 25, -0.1, 450, 23, 21, 0.45],
      says: 'The low opening cannot be below zero.',
    },
    { as: 'a height below 0', figures: [0.1, 25, 0, -450, 23, 21, 0.45], says: 'Height cannot be below zero.' },
    {
      as: '45 typed for 45 %',
      figures: [0.1, 25, 0, 450, 23, 21, 45],
      says: 'Room humidity is a share from 0 to 1; you gave 45.',
    },
    {
      as: 'boiling air',
      figures: [0.1, 25, 0, 450, 100, 21, 0.45],
      says: 'The air formula needs air from -100 to 100 C.',
    },
    {
      as: 'air colder than any',
      figures: [0.1, 25, 0, 450, 23, -100, 0.45],
      says: 'The air formula needs air from -100 to 100 C.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(airExchange.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    {
      as: 'a tank far over its room',
      figures: [0.01, 25, 0, 450, 31.1, 21, 0.45],
      says: 'More than 10 K: the sum was made for 0 to 10.',
    },
    {
      as: 'a tank colder than its room',
      figures: [0.01, 25, 0, 450, 18, 23, 0.45],
      says: 'Cold air stays in: only draught and the doors change it.',
    },
    { as: 'nothing in a tank 10 K over its room', figures: [0.01, 25, 0, 450, 31, 21, 0.45], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = airExchange.compute(figures);
    expect(airExchange.warn?.(figures, Number(answer))).toBe(says);
  });
});
