import { isPlain, PLAIN, timesDimension } from '#shared-calc/quantity/dimension.ts';
import { figureKind, type Kind } from '#shared-calc/quantity/kind.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Whole plants for a density over an area, a length or a count, rounded up, and never fewer than the minimum. */
export const plantCount = tradeFunction({
  name: 'plant_count',
  title: 'Number of plants',
  group: 'media',
  args: [
    { name: 'density', takes: 'any', says: 'plants a square metre, or a metre' },
    { name: 'measure', takes: 'any', says: 'area or length to plant' },
    { name: 'least', takes: 'each', low: 0, high: 5, says: 'fewest plants' },
  ],
  gives: (kinds) => countOf(kinds),
  sum: 'density x measure, up to the whole plant, at least the least',
  help: 'Plants of one class. Density and measure together must come to a count: each/m2 x m2, each/m x m.',
  examples: [
    { rule: 'plant_count(14 each/m2, 0.267 m2, 0)', gives: '4 each' },
    { rule: 'plant_count(5 each/m, 600 mm, 1)', gives: '3 each' },
    { rule: 'plant_count(2 each/m2, 0.09 m2, 1)', gives: '1 each' },
  ],
  source: 'common practice, no source',
  cautions: ['plantDips', 'poisonPlants'],
  compute: ({ density, measure, least }) =>
    belowZero({ Density: density, Measure: measure, 'Least number': least }) ??
    Math.max(countUp(least), countUp(density * measure)),
});

function countOf([density, measure]: readonly Kind[]): Kind | undefined {
  if (density?.is !== 'figure' || measure?.is !== 'figure') return undefined;
  if (density.sort === 'reading' || measure.sort === 'reading') return undefined;
  return isPlain(timesDimension(density.dimension, measure.dimension)) ? figureKind(PLAIN, 'count') : undefined;
}
