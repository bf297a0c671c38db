import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Grams of dry leaves in a layer of litter, at its loose density. */
export const litterMass = tradeFunction({
  name: 'litter_mass',
  title: 'Mass of the litter',
  group: 'leaves',
  args: [
    { name: 'area', takes: 'm2', low: 0.02, high: 3, says: 'inside floor' },
    { name: 'depth', takes: 'mm', low: 0, high: 120, says: 'depth of the litter, loose' },
    { name: 'density', takes: 'g/L', low: 5, high: 60, says: 'dry leaves in a litre' },
  ],
  gives: 'g',
  sum: 'area x depth x density',
  help: 'Dry leaves to weigh out for a layer. Weigh a litre of your own: hand-packed leaves are denser.',
  examples: [
    { rule: 'litter_mass(0.4005 m2, 30 mm, 12.2 g/L)', gives: '146.58 g' },
    { rule: 'litter_mass(0.198 m2, 30 mm, 12.2 g/L)', gives: '72.468 g' },
  ],
  source: '12.2 g/L of hardwood litter: Ottmar and Andreu 2007',
  cautions: ['litterDensity'],
  compute: ({ area, depth, density }) =>
    belowZero({ Area: area, Depth: depth, Density: density }) ?? area * depth * density,
});
