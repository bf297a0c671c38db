import { describe, expect, test } from 'vitest';
import { bothSexesChance } from '#shared-calc/trade/cultures/both-sexes-chance.ts';

describe('bothSexesChance', () => {
  // Worked by hand from the chance of independent draws.
  test.each([
    { as: 'eight founders that all live: 99.22 %', figures: [8, 0.5, 1], gives: 0.9922, digits: 4 },
    { as: 'eight of which 80 % live: 96.64 %', figures: [8, 0.5, 0.8], gives: 0.9664, digits: 4 },
    { as: 'one animal of two sexes never breeds', figures: [1, 0.5, 1], gives: 0, digits: 12 },
    { as: 'males alone never breed', figures: [20, 1, 1], gives: 0, digits: 12 },
    { as: 'of a kind with females only one that lives is enough', figures: [3, 0, 0.5], gives: 0.875, digits: 12 },
    { as: 'no founders, no chance', figures: [0, 0.5, 1], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(bothSexesChance.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'founders below zero', figures: [-1, 0.5, 1], says: 'Founders cannot be below zero.' },
    { as: '50 typed for 50 %', figures: [8, 50, 1], says: 'Male share is a share from 0 to 1; you gave 50.' },
    {
      as: 'a survival over 1',
      figures: [8, 0.5, 1.2],
      says: 'Share that survives is a share from 0 to 1; you gave 1.2.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(bothSexesChance.compute(figures)).toEqual({ refused: says });
  });
});
