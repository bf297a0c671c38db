import { describe, expect, test } from 'vitest';
import { vapourLoss } from '#shared-calc/trade/air-and-light/vapour-loss.ts';

describe('vapourLoss', () => {
  // Worked by hand from the Bolton 1980 form of the Magnus equation.
  test.each([
    { as: 'in winter 49.06 mL leave in a day', figures: [0.180225, 1, 24, 0.9, 21, 0.45], gives: 49.06, digits: 2 },
    { as: 'in summer 31.36 mL leave', figures: [0.180225, 1, 24, 0.9, 23, 0.6], gives: 31.36, digits: 2 },
    { as: 'still air loses nothing', figures: [0.180225, 0, 24, 0.9, 21, 0.45], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(vapourLoss.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'air below zero', figures: [-0.1, 1, 24, 0.9, 21, 0.45], says: 'Air cannot be below zero.' },
    { as: 'air changes below zero', figures: [0.18, -1, 24, 0.9, 21, 0.45], says: 'Air changes cannot be below zero.' },
    {
      as: '90 typed for 90 %',
      figures: [0.18, 1, 24, 90, 21, 0.45],
      says: 'Humidity is a share from 0 to 1; you gave 90.',
    },
    {
      as: '45 typed for 45 %',
      figures: [0.18, 1, 24, 0.9, 21, 45],
      says: 'Humidity is a share from 0 to 1; you gave 45.',
    },
  ])('refuses $as', ({ figures, says }) => {
    expect(vapourLoss.compute(figures)).toEqual({ refused: says });
  });

  test.each([
    {
      as: 'a room damper than the tank',
      figures: [0.18, 1, 20, 0.5, 25, 0.9],
      says: 'The room adds water; loss is negative.',
    },
    { as: 'nothing in a dry room', figures: [0.18, 1, 24, 0.9, 21, 0.45], says: undefined },
  ])('answers, and looks twice at $as', ({ figures, says }) => {
    const answer = vapourLoss.compute(figures);
    expect(vapourLoss.warn?.(figures, typeof answer === 'number' ? answer : Number.NaN)).toBe(says);
  });
});
