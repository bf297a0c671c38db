import { countUp } from '#shared-calc/trade/count-up.ts';
import { notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

/** Whole panes of at most the longest side over a length, mm; rounded up. */
export function paneCount(length: number, longest: number): Answer {
  return notAboveZero({ 'The length': length, 'The longest pane': longest }) ?? countUp(length / longest);
}

/** Whole panes of cover glass over a length. Refuses a length or a longest pane of zero or less. */
export const coverPanes = tradeFunction({
  name: 'cover_panes',
  title: 'Cover panes',
  group: 'air and light',
  args: [
    { name: 'length', takes: 'mm', low: 100, high: 3000, says: 'inside, widest' },
    { name: 'longest', takes: 'mm', low: 300, high: 900, says: 'longest pane to handle; 600 for 4 mm glass' },
  ],
  gives: 'each',
  sum: 'length / longest, up to the whole',
  help: 'How many panes cover the tank side by side.',
  examples: [
    { rule: 'cover_panes(900 mm, 600 mm)', gives: '2 each' },
    { rule: 'cover_panes(600 mm, 600 mm)', gives: '1 each' },
  ],
  source: 'common practice, no source',
  cautions: ['coverGlass'],
  compute: ({ length, longest }) => paneCount(length, longest),
});
