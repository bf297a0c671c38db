import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { floorArguments, onFloor } from './tank-shape.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/**
 * Floor within this distance of the frontmost point or edge, m2; at most the whole floor. A hexagon has a side to the
 * front; a corner tank's strip runs along its cut edge.
 */
export const frontStripArea = tradeFunction({
  name: 'front_strip_area',
  title: 'Area of the front strip',
  group: 'geometry',
  args: [
    ...floorArguments,
    { name: 'strip', takes: 'mm', low: 0, high: 600, says: 'depth of the strip, from the front' },
  ],
  gives: 'm2',
  sum:
    'rectangle: strip x length; bow: circle segment, then strip x length; corner: strip x (cut edge + strip); ' +
    'hexagon: strip x (side + strip / root 3); cylinder: circle segment; past the widest place what is left counts',
  help: 'The open area of a vent strip along the front of the top.',
  examples: [
    { rule: 'front_strip_area("rectangle", 900 mm, 445 mm, 0 mm, 0 mm, 25 mm)', gives: '0.0225 m2' },
    { rule: 'front_strip_area("corner", 580 mm, 580 mm, 0 mm, 250 mm, 25 mm)', gives: '0.0122923 m2' },
    { rule: 'front_strip_area("cylinder", 400 mm, 400 mm, 0 mm, 0 mm, 200 mm)', gives: '0.0628319 m2' },
  ],
  source: 'geometry',
  cautions: ['coverGlass', 'openings'],
  compute: ({ strip, ...sizes }) =>
    belowZero({ Strip: strip }) ?? onFloor(sizes, (floor) => floor.strip(Math.min(strip, floor.run)) / 1e6),
});
