import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** The margin of a mark-up, as a share of the price. */
export const marginFromMarkup = tradeFunction({
  name: 'margin_from_markup',
  title: 'Margin from mark-up',
  group: 'price',
  args: [{ name: 'markup', takes: 'share', low: 0, high: 3, says: 'share of the cost that is added' }],
  gives: 'share',
  sum: 'markup / (1 + markup)',
  help: 'What share of the price stays where a share of the cost is added.',
  examples: [
    { rule: 'margin_from_markup(53.85 %)', gives: '35.0 %' },
    { rule: 'margin_from_markup(25 %)', gives: '20 %' },
  ],
  source: 'definition of margin and mark-up',
  compute: ({ markup }) =>
    firstRefusal([[markup <= -1, 'A mark-up of -100 % gives the goods away; no margin follows.']]) ??
    markup / (1 + markup),
});
