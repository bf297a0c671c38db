import { describe, expect, test } from 'vitest';
import { moneyBarsSpec } from '#renderer/curves/money-bars-spec.ts';
import type { PricedLine, QuoteSums } from '#shared-calc/price/quote-sums.ts';

function line(label: string, costCoins: number, priceCoins: number): PricedLine {
  return { group: label, label, costCoins, priceCoins, reserveCoins: 0, margin: 0, taxClass: 'standard' };
}

function sums(...lines: readonly PricedLine[]): QuoteSums {
  const add = (of: (each: PricedLine) => number) => lines.reduce((sum, each) => sum + of(each), 0);
  return {
    lines,
    costCoins: add((each) => each.costCoins),
    netCoins: add((each) => each.priceCoins),
    tax: [],
    grossCoins: 0,
    depositCoins: 0,
    hours: 0,
  };
}

const words = { currency: 'cr', decimalComma: false, money: (coins: number) => (coins / 100).toFixed(2) };

describe('moneyBarsSpec', () => {
  test('the dearest group comes first and sets the length of all bars', () => {
    const spec = moneyBarsSpec(sums(line('Tank', 21_400, 30_570), line('Work', 52_675, 70_233)), words);

    // 702.33 of 1,008.03 is 69.7 %; 305.70 / 702.33 = 0.4353, of which 214.00 / 702.33 = 0.3047 is cost.
    expect([spec?.title, spec?.under, spec?.bars.map(({ name, cost }) => [name, cost.toFixed(4)])]).toEqual([
      'Work: 70 % of the price',
      '1008.03 cr before tax, of which 740.75 is cost',
      [
        ['Work', '0.7500'],
        ['Tank', '0.3047'],
      ],
    ]);
    expect(spec?.table.rows[1]).toEqual(['Tank', '214.00', '91.70', '305.70', '30 %']);
  });

  test('what is sold under its cost shows no margin, and its table says by how much', () => {
    const spec = moneyBarsSpec(sums(line('Delivery', 2_000, 1_500)), words);

    expect([spec?.bars, spec?.table.rows]).toEqual([
      [{ name: 'Delivery', cost: 1, margin: 0, price: '15.00' }],
      [['Delivery', '20.00', '-5.00', '15.00', '100 %']],
    ]);
  });

  test('a quote without a price has nothing to draw', () => {
    expect(moneyBarsSpec(sums(line('Gift', 500, 0)), words)).toBeUndefined();
  });
});
