import { describe, expect, test } from 'vitest';
import { dampPassage } from '#shared-calc/trade/air-and-light/damp-passage.ts';

describe('dampPassage', () => {
  // Worked from the Lewis relation, apart from the program; leaf figures from memory.
  test.each([
    { as: 'T07, 30 mm of leaves, 23 young plants', figures: [0.4005, 30, 0.46, 5.98, 12], gives: 1.32087 },
    { as: 'bare damp soil: 9 m/h', figures: [0.4005, 0, 0, 0, 0], gives: 3.6045 },
    { as: 'leaves in the dark pass 0.5 m/h', figures: [0, 0, 2, 0, 12], gives: 1 },
    { as: 'leaves with 3 mol in a 12 h day pass 0.8 m/h more', figures: [0, 0, 2, 3, 12], gives: 2.6 },
    { as: '30 mm of leaves leave a sixth of what bare soil passes', figures: [1, 30, 0, 0, 0], gives: 1.5 },
  ])('$as: $gives m3/h', ({ figures, gives }) => {
    expect(dampPassage.compute(figures)).toBeCloseTo(gives, 5);
  });

  test.each([
    { as: 'a floor below 0', figures: [-1, 0, 0, 0, 0], says: 'The floor cannot be below zero.' },
    { as: 'litter below 0', figures: [1, -1, 0, 0, 0], says: 'Litter cannot be below zero.' },
    { as: 'a leaf area below 0', figures: [1, 0, -1, 0, 0], says: 'The leaf area cannot be below zero.' },
    { as: 'light below 0', figures: [1, 0, 0, -3, 0], says: 'Light cannot be below zero.' },
    { as: 'hours below 0', figures: [1, 0, 0, 0, -1], says: 'Hours cannot be below zero.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(dampPassage.compute(figures)).toEqual({ refused: says });
  });
});
