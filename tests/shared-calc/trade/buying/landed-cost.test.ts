import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { landedCost } from '#shared-calc/trade/buying/landed-cost.ts';

const coins = fc.integer({ min: 0, max: 1_000_000 });

describe('landedCost', () => {
  // Worked by hand; sharing carriage by value is common practice, no source.
  test.each([
    {
      as: '40.00 and 20.00 share 7.50 by value',
      lines: [4000, 2000],
      carriage: 750,
      landed: [4500, 2250],
      charged: 750,
    },
    { as: 'at 90.00 they travel free', lines: [6000, 3000], carriage: 750, landed: [6000, 3000], charged: 0 },
    {
      as: 'the coin over goes to the largest remainder',
      lines: [1000, 1000, 1000],
      carriage: 200,
      landed: [1067, 1067, 1066],
      charged: 200,
    },
    { as: 'no goods, no carriage', lines: [], carriage: 750, landed: [], charged: 0 },
    { as: 'goods worth nothing share it evenly', lines: [0, 0], carriage: 751, landed: [376, 375], charged: 751 },
  ])('$as', ({ lines, carriage, landed, charged }) => {
    expect(landedCost({ lines, carriage, freeFrom: 9000 })).toEqual({ carriage: charged, landed });
  });

  test('a supplier without a free limit always charges', () => {
    expect(landedCost({ lines: [1_000_000], carriage: 1200 })).toEqual({ carriage: 1200, landed: [1_001_200] });
  });

  test.each([
    { as: 'a carriage below zero', goods: { lines: [1], carriage: -1 }, says: 'Carriage cannot be below zero.' },
    { as: 'half a coin', goods: { lines: [1.5], carriage: 1 }, says: 'The cost of a line must be in whole coins.' },
    { as: 'a line below zero', goods: { lines: [-1], carriage: 1 }, says: 'The cost of a line cannot be below zero.' },
    {
      as: 'half a coin of limit',
      goods: { lines: [1], carriage: 1, freeFrom: 0.5 },
      says: 'Free carriage must be in whole coins.',
    },
  ])('refuses $as', ({ goods, says }) => {
    expect(landedCost(goods)).toEqual({ refused: says });
  });

  test('the landed lines add up to goods and carriage, to the coin', () => {
    fc.assert(
      fc.property(fc.array(coins, { minLength: 1, maxLength: 30 }), coins, (lines, carriage) => {
        const cost = landedCost({ lines, carriage });
        const landed = 'refused' in cost ? [] : cost.landed;
        expect(sumOf(landed)).toBe(sumOf(lines) + carriage);
      }),
    );
  });
});

function sumOf(figures: readonly number[]): number {
  return figures.reduce((sum, figure) => sum + figure, 0);
}
