import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

export const MARGIN_BELOW_ONE = "Margin is a share of the price and stays below 1. For 'add 60 %' use mark-up.";

/** Price of which the margin is this share; not rounded. Refuses a margin of 1 or more. */
export const priceFromMargin = tradeFunction({
  name: 'price_from_margin',
  title: 'Price from margin',
  group: 'price',
  args: [
    { name: 'cost', takes: 'money', low: 0, says: 'what it costs us' },
    { name: 'margin', takes: 'share', low: 0, high: 0.7, says: 'share of the price that stays' },
  ],
  gives: 'money',
  sum: 'cost / (1 - margin)',
  help: 'The price of which so large a share stays. A margin is counted on the price, a mark-up on the cost.',
  examples: [
    { rule: 'price_from_margin(100 money, 35 %)', gives: '153.85 money' },
    { rule: 'price_from_margin(5 money, 30 %)', gives: '7.14 money' },
  ],
  source: 'definition of margin',
  compute: ({ cost, margin }) =>
    belowZero({ Cost: cost }) ?? firstRefusal([[margin >= 1, MARGIN_BELOW_ONE]]) ?? cost / (1 - margin),
});
