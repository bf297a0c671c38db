import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { growCount } from '#shared-calc/trade/cultures/grow-count.ts';
import { daysToCount } from '#shared-calc/trade/cultures/days-to-count.ts';

describe('daysToCount', () => {
  // Worked by hand from logistic growth; rates from memory.
  test.each([
    { as: '300 springtails are 4,000 after 46.4 days', figures: [300, 4000, 8000, 0.07], gives: 46.4, digits: 1 },
    { as: 'a culture that is there waits no day', figures: [4000, 4000, 8000, 0.07], gives: 0, digits: 12 },
    { as: 'a culture that is past it waits no day', figures: [5000, 4000, 8000, 0.07], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(daysToCount.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    {
      as: 'a target at the room',
      figures: [300, 8000, 8000, 0.07],
      says: 'The target of 8000 must stay below the room for 8000.',
    },
    { as: 'a start of none', figures: [0, 4000, 8000, 0.07], says: 'The start must be more than zero.' },
    { as: 'animals that do not increase', figures: [300, 4000, 8000, 0], says: 'Growth a day must be more than zero.' },
    { as: 'a target below zero', figures: [300, -1, 8000, 0.07], says: 'Target cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(daysToCount.compute(figures)).toEqual({ refused: says });
  });

  test('in that many days the start grows to the target', () => {
    const share = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    fc.assert(
      fc.property(share, share, (one, other) => {
        const [start, target] = [Math.min(one, other) * 8000, Math.max(one, other) * 8000];
        const days = Number(daysToCount.compute([start, target, 8000, 0.07]));
        expect(Number(growCount.compute([start, 8000, 0.07, days])) / target).toBeCloseTo(1, 9);
      }),
    );
  });
});
