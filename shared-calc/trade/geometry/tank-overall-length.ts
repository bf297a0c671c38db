import { lengthArguments, notALength } from './tank-shape.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** The widest inside measurement from left to right, mm: twice the side of a hexagon, otherwise the length itself. */
export const tankOverallLength = tradeFunction({
  name: 'tank_overall_length',
  title: 'Overall length inside',
  group: 'geometry',
  args: lengthArguments,
  gives: 'mm',
  sum: 'hexagon: 2 x side; every other shape: its length',
  help: 'The widest inside measurement, for cover glass, mesh, lamps and nozzles.',
  examples: [
    { rule: 'tank_overall_length("hexagon", 300 mm)', gives: '600 mm' },
    { rule: 'tank_overall_length("rectangle", 900 mm)', gives: '900 mm' },
  ],
  source: 'geometry',
  compute: (sizes) => notALength(sizes) ?? (sizes.shape === 'hexagon' ? 2 : 1) * sizes.length,
});
