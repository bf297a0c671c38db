import { describe, expect, test } from 'vitest';
import { quoteTax } from '#shared-calc/price/quote-tax.ts';
import { demoRules } from './demo-rules.ts';

describe('quoteTax', () => {
  test('12 % of 1,289.25 and 4 % of 165.00 make 1,615.56 (trade sums, function 46)', () => {
    const lines = [
      { taxClass: 'low', priceCoins: 16_500 },
      { taxClass: 'standard', priceCoins: 100_000 },
      { taxClass: 'standard', priceCoins: 28_925 },
    ];
    expect(quoteTax(lines, demoRules.taxClasses)).toEqual({
      ok: true,
      value: {
        netCoins: 145_425,
        tax: [
          { taxClass: 'standard', label: 'Standard', share: 0.12, netCoins: 128_925, coins: 15_471 },
          { taxClass: 'low', label: 'Low', share: 0.04, netCoins: 16_500, coins: 660 },
        ],
        grossCoins: 161_556,
      },
    });
  });

  test('a tax class that the rate book lacks is refused', () => {
    expect(quoteTax([{ taxClass: 'books', priceCoins: 100 }], demoRules.taxClasses)).toEqual({
      ok: false,
      fault: { kind: 'no-tax-class', taxClass: 'books' },
    });
  });
});
