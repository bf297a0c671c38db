import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const KG_PER_M2_MM = 2.5;

/** kg of glass: 2.5 kg per square metre and mm. */
export const glassMass = tradeFunction({
  name: 'glass_mass',
  title: 'Glass mass',
  group: 'mass',
  args: [
    { name: 'area', takes: 'm2', low: 0, high: 10, says: 'of the panes' },
    { name: 'thickness', takes: 'mm', low: 2, high: 19, says: 'as labelled' },
  ],
  gives: 'kg',
  sum: '2.5 x thickness x area',
  help: 'What panes weigh. Take the labelled thickness.',
  examples: [
    { rule: 'glass_mass(2.0145 m2, 6 mm)', gives: '30.2175 kg' },
    { rule: 'glass_mass(0.373692 m2, 4 mm)', gives: '3.737 kg' },
  ],
  source: 'EN 572-1: 2500 kg/m3',
  cautions: ['glassEdges', 'lifting'],
  compute: ({ area, thickness }) => belowZero({ Area: area, Thickness: thickness }) ?? KG_PER_M2_MM * thickness * area,
});
