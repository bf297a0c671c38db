import { depthArguments, onFloor } from './tank-shape.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** The deepest inside measurement from back to front, mm; for a corner tank its side, not its diagonal. */
export const tankOverallDepth = tradeFunction({
  name: 'tank_overall_depth',
  title: 'Overall depth inside',
  group: 'geometry',
  args: depthArguments,
  gives: 'mm',
  sum: 'rectangle: depth; bow: depth + bow; hexagon: side x root 3; corner: side; cylinder: diameter',
  help: 'The deepest inside measurement, for cover glass and mesh.',
  examples: [
    { rule: 'tank_overall_depth("bow", 890 mm, 390 mm, 70 mm)', gives: '460 mm' },
    { rule: 'tank_overall_depth("hexagon", 300 mm, 300 mm, 0 mm)', gives: '519.615 mm' },
  ],
  source: 'geometry',
  compute: (sizes) => onFloor({ ...sizes, side_return: 0 }, (floor) => floor.overallDepth),
});
