import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { looseNeeded } from '#shared-calc/trade/media/loose-needed.ts';

describe('looseNeeded', () => {
  // Settling and waste: common practice, no source.
  test.each([
    [16.02, 0.02, 0.03, 16.837],
    [4.543, 0.03, 0.03, 4.824],
    [33.705, 0.12, 0.05, 40.216],
    [0, 0.12, 0.05, 0],
    [10, 0, 0, 10],
  ])('%d L placed, settling %d, waste %d: %d L loose', (placed, settle, waste, loose) => {
    expect(looseNeeded.compute([placed, settle, waste])).toBeCloseTo(loose, 3);
  });

  test('what is bought, less waste and settling, is what is placed', () => {
    const share = fc.double({ min: 0, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0, max: 500, noNaN: true }), share, share, (placed, settle, waste) => {
        const loose = Number(looseNeeded.compute([placed, settle, waste]));
        expect((loose / (1 + waste)) * (1 - settle)).toBeCloseTo(placed, 9);
        expect(loose).toBeGreaterThanOrEqual(placed);
      }),
    );
  });

  test.each([
    [[16, 12, 0.03], 'Settling is a share; 12 % is 0.12.'],
    [[16, 7.3, 0.03], 'Settling is a share; 7.3 % is 0.073.'],
    [[16, 1, 0.03], 'Settling is a share; 1 % is 0.01.'],
    [[16, -0.1, 0.03], 'Settling cannot be below zero.'],
    [[16, 0.1, -0.03], 'Waste cannot be below zero.'],
    [[-16, 0.1, 0.03], 'Placed litres cannot be below zero.'],
  ])('%j is refused', (args, says) => {
    expect(looseNeeded.compute(args)).toEqual({ refused: says });
  });

  test('waste typed as a whole number answers and is asked about', () => {
    expect(looseNeeded.warn?.([16, 0.1, 3], 71)).toBe('Waste is a share; 3 % is 0.03.');
    expect(looseNeeded.warn?.([16, 0.1, 0.5], 26)).toBeUndefined();
  });
});
