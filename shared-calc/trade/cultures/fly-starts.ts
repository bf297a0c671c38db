import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero, notAboveZero, notBelowOne } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Fly tubs to set up each week, rounded up to the whole. Refuses a loss of 100 %. */
export const flyStarts = tradeFunction({
  name: 'fly_starts',
  title: 'Fly tubs started a week',
  group: 'cultures',
  args: [
    { name: 'flies', takes: 'each', low: 0, high: 20000, says: 'wanted a week' },
    { name: 'yield', takes: 'each', low: 100, high: 1000, says: 'flies of one tub' },
    { name: 'loss_share', takes: 'share', low: 0, high: 0.3, says: 'tubs that fail' },
  ],
  gives: 'each',
  sum: 'flies / (yield x (1 - loss)), up to the whole',
  help: 'How many fly tubs to set up each week to have so many flies a week.',
  examples: [
    { rule: 'fly_starts(1400, 500, 10 %)', gives: '4 each' },
    { rule: 'fly_starts(350, 350, 0 %)', gives: '1 each' },
  ],
  source: 'common practice, no source',
  cautions: ['feeding'],
  compute: ({ flies, yield: ofTub, loss_share }) =>
    belowZero({ 'Flies a week': flies }) ??
    notAboveZero({ "A tub's yield": ofTub }) ??
    notBelowOne('Loss', loss_share) ??
    countUp(flies / (ofTub * (1 - loss_share))),
});
