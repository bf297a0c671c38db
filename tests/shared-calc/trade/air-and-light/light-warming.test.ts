import { describe, expect, test } from 'vitest';
import { lightWarming } from '#shared-calc/trade/air-and-light/light-warming.ts';

describe('lightWarming', () => {
  // Worked by hand from the balance of heat; share and passage from memory.
  test.each([
    { as: 'three bars warm the tank by 3.75 K', figures: [108, 0.35, 2.0145, 5], gives: 3.75, digits: 2 },
    { as: 'two bars by 2.50 K', figures: [72, 0.35, 2.0145, 5], gives: 2.5, digits: 2 },
    { as: 'dark lamps warm nothing', figures: [0, 0.35, 2.0145, 5], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(lightWarming.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'a power below zero', figures: [-1, 0.35, 2, 5], says: 'Power cannot be below zero.' },
    { as: '35 typed for 35 %', figures: [108, 35, 2, 5], says: 'Heat share is a share from 0 to 1; you gave 35.' },
    { as: 'no surface', figures: [108, 0.35, 0, 5], says: 'Outer area must be more than zero.' },
    { as: 'glass that lets nothing through', figures: [108, 0.35, 2, 0], says: 'Heat passage must be more than zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(lightWarming.compute(figures)).toEqual({ refused: says });
  });
});
