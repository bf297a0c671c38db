import { countUp } from '#shared-calc/trade/count-up.ts';
import { coverArgument, onLayers } from './leaf-layers-for-cover.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/**
 * Whole leaves that cover this share of a floor at random, rounded up. The mass of a leaf does not change the count.
 */
export const leavesForCover = tradeFunction({
  name: 'leaves_for_cover',
  title: 'Leaves for a cover',
  group: 'leaves',
  args: [
    { name: 'area', takes: 'm2', low: 0.02, high: 3, says: 'inside floor' },
    coverArgument,
    { name: 'leaf', takes: 'cm2', low: 15, high: 300, says: 'area of one leaf' },
    { name: 'sheet', takes: 'g/m2', low: 40, high: 300, says: 'mass of one leaf layer; not needed for the count' },
  ],
  gives: 'each',
  sum: '-ln(1 - cover) x area / area of a leaf, up to the whole leaf',
  help: 'How many leaves to count out, where they are sold by the piece.',
  examples: [
    { rule: 'leaves_for_cover(0.4005 m2, 99 %, 18 cm2, 80 g/m2)', gives: '1025 each' },
    { rule: 'leaves_for_cover(0.4005 m2, 99 %, 220 cm2, 110 g/m2)', gives: '84 each' },
  ],
  source: 'chance of a bare spot (Poisson); leaf areas from memory',
  cautions: ['collecting', 'collectedKinds'],
  compute: ({ area, cover, leaf }) =>
    belowZero({ Area: area }) ??
    notAboveZero({ 'Area of a leaf': leaf }) ??
    onLayers(cover, (layers) => countUp((layers * area) / (leaf / 1e4))),
});
