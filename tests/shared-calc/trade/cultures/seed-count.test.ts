import { describe, expect, test } from 'vitest';
import { seedCount } from '#shared-calc/trade/cultures/seed-count.ts';

describe('seedCount', () => {
  // Worked by hand from logistic growth; rates from memory.
  test.each([
    { as: '8,000 a square metre in 21 days ask for 2,658.2', figures: [8000, 20000, 7, 21], gives: 2658.2, digits: 1 },
    { as: '5 % a day asks for more, near half as many again', figures: [8000, 20000, 5, 21], gives: 3783.2, digits: 1 },
    { as: 'no time to grow asks for all of them', figures: [8000, 20000, 7, 0], gives: 8000, digits: 9 },
    { as: 'none wanted, none seeded', figures: [0, 20000, 7, 21], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(seedCount.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a target at the room',
      figures: [20000, 20000, 7, 21],
      says: 'The target of 20000 must stay below the room for 20000.',
    },
    {
      as: 'a target above the room',
      figures: [25000, 20000, 7, 21],
      says: 'The target of 25000 must stay below the room for 20000.',
    },
    { as: 'a target below zero', figures: [-1, 20000, 7, 21], says: 'Target cannot be below zero.' },
    { as: 'a growth below zero', figures: [8000, 20000, -7, 21], says: 'Growth a day cannot be below zero.' },
    { as: 'a time below zero', figures: [8000, 20000, 7, -1], says: 'Time cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(seedCount.compute(figures)).toEqual({ refused: says });
  });
});
