import { describe, expect, test } from 'vitest';
import { liftCrew } from '#shared-calc/trade/mass/lift-crew.ts';

describe('liftCrew', () => {
  // Guide figures of 25 and 16 kg and the shares of a team, from memory; the rest worked by hand.
  test.each([
    { as: 'one carries 25 kg', figures: [25, 25], gives: 1, digits: 12 },
    { as: '32.2 kg take two, who carry 33.35', figures: [32.2, 25], gives: 2, digits: 12 },
    { as: 'three carry 37.5 kg', figures: [37.5, 25], gives: 3, digits: 12 },
    { as: 'four carry 50 kg', figures: [50, 25], gives: 4, digits: 12 },
    { as: '83.2 kg are not lifted', figures: [83.2, 25], gives: 0, digits: 12 },
    { as: 'nothing is carried by one', figures: [0, 25], gives: 1, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(liftCrew.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'a mass below zero', figures: [-1, 25], says: 'Mass cannot be below zero.' },
    { as: 'a limit of zero', figures: [10, 0], says: 'The limit must be more than zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(liftCrew.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    { as: 'a mass that four cannot carry', figures: [50.1, 25], says: 'Do not lift. Build in place or use a trolley.' },
    { as: 'nothing that two can carry', figures: [32.2, 25], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = liftCrew.compute(figures);
    expect(liftCrew.warn?.(figures, typeof answer === 'number' ? answer : Number.NaN)).toBe(says);
  });

  test('left out, the limit is 25 kg', () => {
    expect(liftCrew.args.map((argument) => argument.otherwise)).toEqual([undefined, 25]);
  });
});
