import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Share of the soil covered by leaves that fall at random, from their layers. */
export const leafCover = tradeFunction({
  name: 'leaf_cover',
  title: 'Cover of fallen leaves',
  group: 'leaves',
  args: [{ name: 'layers', takes: 'number', low: 0, high: 10, says: 'area of all leaves over the floor' }],
  gives: 'share',
  sum: '1 - e^(-layers)',
  help: 'Leaves that fall by chance lie on each other and leave gaps. Placed by hand, about half as many cover.',
  examples: [
    { rule: 'leaf_cover(1)', gives: '0.6321' },
    { rule: 'leaf_cover(3)', gives: '0.9502' },
    { rule: 'leaf_cover(4.605)', gives: '0.99' },
  ],
  source: 'chance of a bare spot (Poisson)',
  compute: ({ layers }) => belowZero({ Layers: layers }) ?? -Math.expm1(-layers),
});
