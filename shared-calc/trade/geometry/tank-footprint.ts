import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { floorArguments, onFloor } from './tank-shape.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** The area on the shelf, m2: the inside floor and its glass all round. */
export const tankFootprint = tradeFunction({
  name: 'tank_footprint',
  title: 'Footprint of the tank',
  group: 'geometry',
  args: [...floorArguments, { name: 'glass', takes: 'mm', low: 2, high: 19, says: 'thickness of the walls' }],
  gives: 'm2',
  sum:
    'floor + perimeter x glass + c x glass^2; c is 4 for rectangle and bow, 3 + 2 tan 22.5 for corner, ' +
    '6 tan 30 for hexagon, pi for cylinder',
  help: 'The area that bears on the shelf, walls included.',
  examples: [
    { rule: 'tank_footprint("rectangle", 900 mm, 445 mm, 0 mm, 0 mm, 6 mm)', gives: '0.416784 m2' },
    { rule: 'tank_footprint("cylinder", 400 mm, 400 mm, 0 mm, 0 mm, 5 mm)', gives: '0.132025 m2' },
  ],
  source: 'geometry',
  cautions: ['floorVerdict'],
  compute: ({ glass, ...sizes }) =>
    belowZero({ Glass: glass }) ??
    onFloor(sizes, (floor) => (floor.area + floor.perimeter * glass + floor.corners * glass ** 2) / 1e6),
});
