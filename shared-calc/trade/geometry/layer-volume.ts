import { refused, tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Litres of an even layer, as placed: m2 x mm. Refuses a negative depth; warns over 400 mm. */
export const layerVolume = tradeFunction({
  name: 'layer_volume',
  title: 'Layer volume',
  group: 'geometry',
  args: [
    { name: 'area', takes: 'm2', low: 0.02, high: 3, says: 'inside floor' },
    { name: 'depth', takes: 'mm', low: 0, high: 400, says: 'depth of the layer' },
  ],
  gives: 'L',
  sum: 'area x depth; 1 m2 by 1 mm is 1 L',
  help: 'Litres that an even layer takes, as placed. Measure the floor inside the glass.',
  examples: [
    { rule: 'layer_volume(0.4005 m2, 40 mm)', gives: '16.02 L' },
    { rule: 'layer_volume(0.198 m2, 30 mm)', gives: '5.94 L' },
  ],
  source: 'geometry',
  compute: ({ area, depth }) => {
    if (area < 0) return refused('Area cannot be below zero.');
    return depth < 0 ? refused('Depth cannot be below zero.') : area * depth;
  },
  decides: 'Builder',
  warn: ({ depth }) => (depth > 400 ? 'Depth over 400 mm: is that millimetres?' : undefined),
});
