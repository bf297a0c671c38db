import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { MARGIN_BELOW_ONE } from './price-from-margin.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** The mark-up of a margin, as a share of the cost. Refuses a margin of 1 or more. */
export const markupFromMargin = tradeFunction({
  name: 'markup_from_margin',
  title: 'Mark-up from margin',
  group: 'price',
  args: [{ name: 'margin', takes: 'share', low: 0, high: 0.7, says: 'share of the price that stays' }],
  gives: 'share',
  sum: 'margin / (1 - margin)',
  help: 'What share of the cost must be added so that a share of the price stays.',
  examples: [
    { rule: 'markup_from_margin(40 %)', gives: '66.67 %' },
    { rule: 'markup_from_margin(35 %)', gives: '53.85 %' },
  ],
  source: 'definition of margin and mark-up',
  compute: ({ margin }) => firstRefusal([[margin >= 1, MARGIN_BELOW_ONE]]) ?? margin / (1 - margin),
});
