import { describe, expect, test } from 'vitest';
import { lampsNeeded } from '#shared-calc/trade/air-and-light/lamps-needed.ts';

describe('lampsNeeded', () => {
  // Worked by hand from the sum; that 1 % short counts as met is our own choice.
  test.each([
    { as: '5 from bars of 2.241 take three', figures: [5, 2.241], gives: 3, digits: 12 },
    { as: '5 from bars of 2.988 take two', figures: [5, 2.988], gives: 2, digits: 12 },
    { as: 'a shortfall just under 1 % counts as met', figures: [5, 4.951], gives: 1, digits: 12 },
    { as: 'a shortfall over 1 % does not', figures: [5, 4.94], gives: 2, digits: 12 },
    { as: 'no light wanted, no lamp', figures: [0, 2.241], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(lampsNeeded.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'a light below zero', figures: [-1, 2.241], says: 'The light wanted cannot be below zero.' },
    { as: 'a lamp that gives none', figures: [5, 0], says: 'The light of one lamp must be more than zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(lampsNeeded.compute(figures)).toEqual({ refused: says });
  });
});
