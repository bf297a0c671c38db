import { describe, expect, test } from 'vitest';
import { dailyLight } from '#shared-calc/trade/air-and-light/daily-light.ts';

describe('dailyLight', () => {
  // Worked by hand from DLI = PPFD x hours x 0.0036; shares from memory.
  test.each([
    {
      as: 'a bar over glass and screen gives 2.241',
      figures: [68.4, 0.45, 0.675, 0.4005, 12],
      gives: 2.241,
      digits: 3,
    },
    { as: 'without the screen it gives 2.988', figures: [68.4, 0.45, 0.9, 0.4005, 12], gives: 2.988, digits: 3 },
    { as: 'a dark day gives none', figures: [68.4, 0.45, 0.9, 0.4005, 0], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(dailyLight.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'a light below zero', figures: [-1, 0.45, 0.9, 0.4, 12], says: 'Light output cannot be below zero.' },
    { as: 'hours below zero', figures: [68.4, 0.45, 0.9, 0.4, -1], says: 'Hours cannot be below zero.' },
    {
      as: '45 typed for 45 %',
      figures: [68.4, 45, 0.9, 0.4, 12],
      says: 'The use of light is a share from 0 to 1; you gave 45.',
    },
    {
      as: 'glass that lets more through than there is',
      figures: [68.4, 0.45, 1.1, 0.4, 12],
      says: 'Light let through is a share from 0 to 1; you gave 1.1.',
    },
    { as: 'no floor', figures: [68.4, 0.45, 0.9, 0, 12], says: 'Floor area must be more than zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(dailyLight.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    { as: 'a day of 17 hours', figures: [68.4, 0.45, 0.9, 0.4, 17], says: 'Animals need a night.' },
    { as: 'nothing at 16 hours', figures: [68.4, 0.45, 0.9, 0.4, 16], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = dailyLight.compute(figures);
    expect(dailyLight.warn?.(figures, typeof answer === 'number' ? answer : Number.NaN)).toBe(says);
  });
});
