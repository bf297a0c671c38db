import { floorArguments, onFloor } from './tank-shape.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Inside edge of the floor all round, m; a bow front counts along its curve. */
export const tankPerimeter = tradeFunction({
  name: 'tank_perimeter',
  title: 'Perimeter of the tank',
  group: 'geometry',
  args: floorArguments,
  gives: 'm',
  sum: 'all inside edges together; a bow front along its arc, the cut edge of a corner tank (side - return) x root 2',
  help: 'The length of glass along the floor, for walls, clay edge and mesh.',
  examples: [
    { rule: 'tank_perimeter("rectangle", 900 mm, 445 mm, 0 mm, 0 mm)', gives: '2.69 m' },
    { rule: 'tank_perimeter("corner", 580 mm, 580 mm, 0 mm, 250 mm)', gives: '2.12669 m' },
    { rule: 'tank_perimeter("bow", 890 mm, 390 mm, 70 mm, 0 mm)', gives: '2.57461 m' },
  ],
  source: 'geometry',
  compute: (sizes) => onFloor(sizes, (floor) => floor.perimeter / 1000),
});
