import { describe, expect, test } from 'vitest';
import { leafBatches } from '#shared-calc/trade/heat/leaf-batches.ts';

describe('leafBatches', () => {
  // Worked by hand from the volumes; two thirds full is common practice, no source.
  test.each([
    { as: '43.51 L in a 21 L vessel filled to 0.6 make 4 batches', figures: [43.51, 21, 0.6], gives: 4, digits: 12 },
    { as: '43.51 L in a 60 L oven filled to half make 2', figures: [43.51, 60, 0.5], gives: 2, digits: 12 },
    { as: 'a load that just fits is one batch, binary noise or not', figures: [12.6, 21, 0.6], gives: 1, digits: 12 },
    { as: 'no leaves make no batch', figures: [0, 21, 0.6], gives: 0, digits: 12 },
  ])('$as', ({ figures, gives, digits }) => {
    expect(leafBatches.compute(figures)).toBeCloseTo(gives, digits);
  });

  test.each([
    { as: 'leaves below zero', figures: [-1, 21, 0.6], says: 'Leaves cannot be below zero.' },
    { as: 'a vessel that holds nothing', figures: [10, 0, 0.6], says: 'The vessel must be more than zero.' },
    { as: 'an empty fill', figures: [10, 21, 0], says: 'Fill must be more than zero.' },
    { as: '60 typed for 60 %', figures: [10, 21, 60], says: 'Fill is a share from 0 to 1; you gave 60.' },
  ])('refuses $as', ({ figures, says }) => {
    expect(leafBatches.compute(figures)).toEqual({ refused: says });
  });
});
