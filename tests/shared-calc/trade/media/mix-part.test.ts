import { describe, expect, test } from 'vitest';
import { mixPart } from '#shared-calc/trade/media/mix-part.ts';

describe('mixPart', () => {
  // Blending shrinkage: common practice, no source.
  test.each([
    [3, 13.71],
    [2, 9.14],
    [1, 4.57],
    [0, 0],
  ])('%d parts of ten for 40.216 L at 12 % shrinkage take %d L', (part, litres) => {
    expect(mixPart.compute([40.216, part, 10, 0.12])).toBeCloseTo(litres, 3);
  });

  test.each([
    [[40, 3, 0, 0.12], 'Parts must be positive.'],
    [[40, 0, 0, 0.12], 'Parts must be positive.'],
    [[40, -3, 10, 0.12], 'Parts must be positive.'],
    [[40, 3, 10, 1], 'Blending shrinkage is a share; 1 % is 0.01.'],
    [[40, 3, 10, -0.1], 'Blending shrinkage cannot be below zero.'],
    [[-40, 3, 10, 0.12], 'Loose litres cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(mixPart.compute(args)).toEqual({ refused: says });
  });

  test('a part of more than the whole answers and is asked about', () => {
    expect(mixPart.warn?.([40, 4, 3, 0], 53)).toBe('4 parts are more than all 3 parts together.');
    expect(mixPart.warn?.([40, 3, 3, 0], 40)).toBeUndefined();
  });
});
