import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const WEEK = 7;

/** Fly tubs on the shelf at once; rounded up to the whole. */
export const flyTubs = tradeFunction({
  name: 'fly_tubs',
  title: 'Fly tubs on the shelf',
  group: 'cultures',
  args: [
    { name: 'starts', takes: 'each', low: 0, high: 100, says: 'tubs set up a week' },
    { name: 'first', takes: 'd', low: 7, high: 35, says: 'from setting up to the first flies' },
    { name: 'productive', takes: 'd', low: 7, high: 35, says: 'days that a tub then gives flies' },
  ],
  gives: 'each',
  sum: 'starts x (first + productive) / 7, up to the whole',
  help: 'How many tubs stand on the shelf, those that grow and those that give.',
  examples: [
    { rule: 'fly_tubs(4, 14 d, 21 d)', gives: '20 each' },
    { rule: 'fly_tubs(1, 24 d, 21 d)', gives: '7 each' },
  ],
  source: 'common practice, no source',
  compute: ({ starts, first, productive }) =>
    belowZero({ 'Starts a week': starts, 'Days to the first flies': first, 'Productive days': productive }) ??
    countUp((starts * (first + productive)) / WEEK),
});
