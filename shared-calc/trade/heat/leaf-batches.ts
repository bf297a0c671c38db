import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

/** Whole loads of a vessel filled to a share; rounded up. */
export function leafBatchCount(leaves: number, vessel: number, fill: number): Answer {
  return (
    belowZero({ Leaves: leaves }) ??
    notAboveZero({ 'The vessel': vessel, Fill: fill }) ??
    outsideShare({ Fill: fill }) ??
    countUp(leaves / (vessel * fill))
  );
}

/** Whole batches for an amount of loose litres. Refuses a vessel of zero litres and a fill outside 0 to 1. */
export const leafBatches = tradeFunction({
  name: 'leaf_batches',
  title: 'Leaf batches',
  group: 'heat',
  args: [
    { name: 'leaves', takes: 'L', low: 0, high: 500, says: 'loose leaves' },
    { name: 'vessel', takes: 'L', low: 5, high: 100, says: 'inside of the vessel or oven' },
    { name: 'fill', takes: 'share', low: 0.3, high: 0.67, says: 'how full it is loaded' },
  ],
  gives: 'each',
  sum: 'leaves / (vessel x fill), up to the whole',
  help: 'How many loads the leaves make.',
  examples: [
    { rule: 'leaf_batches(43.51 L, 21 L, 60 %)', gives: '4 each' },
    { rule: 'leaf_batches(43.51 L, 60 L, 50 %)', gives: '2 each' },
  ],
  source: 'volume; two thirds full at most is common practice, no source',
  cautions: ['steamLoad'],
  compute: ({ leaves, vessel, fill }) => leafBatchCount(leaves, vessel, fill),
});
