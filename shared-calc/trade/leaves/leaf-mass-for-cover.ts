import { coverArgument, onLayers } from './leaf-layers-for-cover.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Grams of dry leaves that cover this share of a floor when they fall at random. */
export const leafMassForCover = tradeFunction({
  name: 'leaf_mass_for_cover',
  title: 'Mass of leaves for a cover',
  group: 'leaves',
  args: [
    { name: 'area', takes: 'm2', low: 0.02, high: 3, says: 'inside floor' },
    coverArgument,
    { name: 'sheet', takes: 'g/m2', low: 40, high: 300, says: 'mass of one leaf layer' },
  ],
  gives: 'g',
  sum: '-ln(1 - cover) x area x mass of one leaf layer',
  help: 'Grams of dry leaves to weigh out. 99 % asks for 4.6 layers.',
  examples: [
    { rule: 'leaf_mass_for_cover(0.4005 m2, 99 %, 80 g/m2)', gives: '147.55 g' },
    { rule: 'leaf_mass_for_cover(1 m2, 99 %, 80 g/m2)', gives: '368.41 g' },
  ],
  source: 'chance of a bare spot (Poisson); 80 g/m2 of oak BioNumbers 107171',
  cautions: ['collecting', 'collectedKinds'],
  compute: ({ area, cover, sheet }) =>
    belowZero({ Area: area, 'Mass of a leaf layer': sheet }) ?? onLayers(cover, (layers) => layers * area * sheet),
});
