import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceOfBreeding } from '#shared-calc/trade/cultures/both-sexes-chance.ts';
import { foundersNeeded } from '#shared-calc/trade/cultures/founders-needed.ts';

describe('foundersNeeded', () => {
  // Worked by hand from the chance of independent draws.
  test.each([
    { as: '99 % with all alive takes 8; 7 give 98.44 %', figures: [0.99, 0.5, 1], gives: 8, digits: 12 },
    { as: '99 % with 80 % alive takes 11; 10 give 98.79 %', figures: [0.99, 0.5, 0.8], gives: 11, digits: 12 },
    { as: 'three males in ten and nine alive take 15', figures: [0.99, 0.3, 0.9], gives: 15, digits: 12 },
    { as: 'a kind of females only, all alive, takes one', figures: [0.99, 0, 1], gives: 1, digits: 12 },
    { as: 'no chance asked takes none', figures: [0, 0.5, 1], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(foundersNeeded.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'certainty',
      figures: [1, 0.5, 1],
      says: 'No number of founders makes it certain; keep the chance below 100 %, as 99 %.',
    },
    {
      as: '99 typed for 99 %',
      figures: [99, 0.5, 1],
      says: 'No number of founders makes it certain; keep the chance below 100 %, as 99 %.',
    },
    { as: 'a chance below zero', figures: [-0.1, 0.5, 1], says: 'Chance cannot be below zero.' },
    { as: 'males alone', figures: [0.99, 1, 1], says: 'Males alone never breed.' },
    { as: 'none that live', figures: [0.99, 0.5, 0], says: 'No group breeds where none survives.' },
    { as: 'a share over 1', figures: [0.99, 0.5, 2], says: 'Share that survives is a share from 0 to 1; you gave 2.' },
    { as: 'a hopeless line', figures: [0.99, 0.5, 1e-7], says: 'More than a million founders would be needed.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(foundersNeeded.compute(figures)).toEqual({ refused: says });
  });

  test('it is the least group: one fewer is not enough', () => {
    const share = fc.double({ min: 0.1, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(share, share, share, (chance, male, live) => {
        const founders = Number(foundersNeeded.compute([chance, male, live]));
        expect(chanceOfBreeding(founders, male, live)).toBeGreaterThanOrEqual(chance - 1e-12);
        expect(chanceOfBreeding(founders - 1, male, live)).toBeLessThan(chance);
      }),
    );
  });
});
