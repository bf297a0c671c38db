import { figureKind, type Kind } from '#shared-calc/quantity/kind.ts';
import { PLAIN, sameDimension } from '#shared-calc/quantity/dimension.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Whole packs for what stock does not cover, rounded up, never below 0. All three figures have one dimension. */
export const bagCount = tradeFunction({
  name: 'bag_count',
  title: 'Bags to buy',
  group: 'buying',
  args: [
    { name: 'need', takes: 'any', says: 'how much is needed' },
    { name: 'pack', takes: 'any', says: 'what one pack holds' },
    { name: 'on_hand', takes: 'any', says: 'what the store has' },
  ],
  gives: (kinds) => (alike(kinds) ? figureKind(PLAIN, 'count') : undefined),
  sum: '(need - on hand) / pack, up to the whole pack, never below 0',
  help: 'Packs of one size to buy. Need, pack and stock are all litres, or all grams, or all pieces.',
  examples: [
    { rule: 'bag_count(16.837 L, 10 L, 0 L)', gives: '2 each' },
    { rule: 'bag_count(16.837 L, 10 L, 7 L)', gives: '1 each' },
    { rule: 'bag_count(16.837 L, 10 L, 20 L)', gives: '0 each' },
  ],
  source: 'whole packs',
  compute: ({ need, pack, on_hand: onHand }) =>
    belowZero({ Need: need, 'On hand': onHand }) ??
    notAboveZero({ Pack: pack }) ??
    Math.max(0, countUp((need - onHand) / pack)),
});

/** Figures of one dimension; temperatures are refused, as they cannot be packed. */
function alike([first, ...others]: readonly Kind[]): boolean {
  if (first?.is !== 'figure' || first.sort === 'reading') return false;
  return others.every(
    (kind) => kind.is === 'figure' && kind.sort !== 'reading' && sameDimension(kind.dimension, first.dimension),
  );
}
