import { notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Leaves in 100 g, not rounded. */
export const leafCountPer100g = tradeFunction({
  name: 'leaf_count_per_100g',
  title: 'Leaves in 100 g',
  group: 'leaves',
  args: [
    { name: 'leaf', takes: 'cm2', low: 15, high: 300, says: 'area of one leaf' },
    { name: 'sheet', takes: 'g/m2', low: 40, high: 300, says: 'mass of one leaf layer' },
  ],
  gives: 'number',
  sum: '100 g / (mass of one leaf layer x area of a leaf)',
  help: 'To compare leaves sold by mass with leaves sold by the piece.',
  examples: [
    { rule: 'leaf_count_per_100g(18 cm2, 80 g/m2)', gives: '694.4' },
    { rule: 'leaf_count_per_100g(100 cm2, 190 g/m2)', gives: '52.63' },
  ],
  source: '80 g/m2 of oak: BioNumbers 107171; leaf areas from memory',
  compute: ({ leaf, sheet }) =>
    notAboveZero({ 'Area of a leaf': leaf, 'Mass of a leaf layer': sheet }) ?? 100 / (sheet * (leaf / 1e4)),
});
