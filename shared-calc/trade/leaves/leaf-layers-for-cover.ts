import { belowZero, sayShare } from '#shared-calc/trade/refuse-figure.ts';
import { refused, tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

/** The cover argument, shared by every function that has it. */
export const coverArgument = {
  name: 'cover',
  takes: 'share',
  low: 0.5,
  high: 0.99,
  says: 'share of the soil to cover',
} as const;

/** Layers of leaves that cover this share at random, passed to a sum; refuses a cover of 1 or more. */
export function onLayers(cover: number, sum: (layers: number) => Answer): Answer {
  if (cover === 1) return refused('Full cover by chance never quite happens; use 0.99, then place by hand.');
  if (cover > 1) return refused(sayShare('Cover', cover));
  return belowZero({ Cover: cover }) ?? sum(-Math.log1p(-cover));
}

/** Layers of leaves that cover this share of the soil when they fall at random. */
export const leafLayersForCover = tradeFunction({
  name: 'leaf_layers_for_cover',
  title: 'Layers of leaves for a cover',
  group: 'leaves',
  args: [coverArgument],
  gives: 'number',
  sum: '-ln(1 - cover)',
  help: 'How many times over the floor the leaves must go, let fall by chance.',
  examples: [
    { rule: 'leaf_layers_for_cover(99 %)', gives: '4.60517' },
    { rule: 'leaf_layers_for_cover(0.95)', gives: '2.99573' },
  ],
  source: 'chance of a bare spot (Poisson)',
  compute: ({ cover }) => onLayers(cover, (layers) => layers),
});
