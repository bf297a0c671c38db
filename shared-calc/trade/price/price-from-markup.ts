import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Cost plus a share of it; not rounded. Refuses a reduction of more than the cost. */
export const priceFromMarkup = tradeFunction({
  name: 'price_from_markup',
  title: 'Price from mark-up',
  group: 'price',
  args: [
    { name: 'cost', takes: 'money', low: 0, says: 'what it costs us' },
    { name: 'markup', takes: 'share', low: 0, high: 3, says: 'share of the cost that is added' },
  ],
  gives: 'money',
  sum: 'cost x (1 + markup)',
  help: 'The price where a share of the cost is added. The same share as a margin gives a higher price.',
  examples: [
    { rule: 'price_from_markup(100 money, 35 %)', gives: '135.00 money' },
    { rule: 'price_from_markup(10 money, 50 %)', gives: '15 money' },
  ],
  source: 'definition of mark-up',
  compute: ({ cost, markup }) =>
    belowZero({ Cost: cost }) ??
    firstRefusal([[markup < -1, 'A mark-up below -100 % makes the price less than nothing.']]) ??
    cost * (1 + markup),
});
