import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Minutes of the nth build of a kind: each doubling of n multiplies the time by the learning share. Not rounded. */
export const repeatMinutes = tradeFunction({
  name: 'repeat_minutes',
  title: 'Repeat minutes',
  group: 'price',
  args: [
    { name: 'first', takes: 'min', low: 0, high: 3000, says: 'minutes of the first build' },
    { name: 'nth', takes: 'number', low: 1, high: 50, says: 'which build it is' },
    {
      name: 'learning',
      takes: 'share',
      low: 0.8,
      high: 1,
      says: 'of the time, each time the number doubles; 90 % is usual',
    },
  ],
  gives: 'min',
  sum: 'first x nth ^ log2(learning)',
  help: 'How long the nth of several like builds takes.',
  examples: [
    { rule: 'repeat_minutes(449.35 min, 3, 90 %)', gives: '380.2 min' },
    { rule: 'repeat_minutes(100 min, 4, 90 %)', gives: '81 min' },
  ],
  source: 'common practice, no source',
  compute: ({ first, nth, learning }) =>
    belowZero({ Minutes: first }) ??
    firstRefusal([[nth < 1, 'Builds are counted from 1.']]) ??
    notAboveZero({ 'The learning share': learning }) ??
    first * nth ** Math.log2(learning),
});
