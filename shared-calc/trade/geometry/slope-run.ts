import { floorArguments, onFloor } from './tank-shape.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** mm over which the soil rises from front to back; for a corner tank along its diagonal. */
export const slopeRun = tradeFunction({
  name: 'slope_run',
  title: 'Run of the slope',
  group: 'geometry',
  args: floorArguments,
  gives: 'mm',
  sum: 'overall depth; corner: (2 x side - c) / root 2, c = side - return',
  help: 'How far the soil slopes from front to back; a corner tank slopes along its diagonal.',
  examples: [
    { rule: 'slope_run("corner", 580 mm, 580 mm, 0 mm, 250 mm)', gives: '586.90 mm' },
    { rule: 'slope_run("bow", 890 mm, 390 mm, 70 mm, 0 mm)', gives: '460 mm' },
  ],
  source: 'geometry',
  compute: (sizes) => onFloor(sizes, (floor) => floor.run),
});
