import { floorArguments, onFloor } from './tank-shape.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Inside floor of any of the five shapes, m2. Refuses a bow over the half circle and a return as long as the side. */
export const tankFloorArea = tradeFunction({
  name: 'tank_floor_area',
  title: 'Floor area of the tank',
  group: 'geometry',
  args: floorArguments,
  gives: 'm2',
  sum:
    'rectangle: length x depth; bow: the same and a circle segment; corner: side^2 - (side - return)^2 / 2; ' +
    'hexagon: 2.5981 x side^2; cylinder: pi / 4 x diameter^2',
  help: 'Inside floor, glass to glass. Measure inside: catalogue sizes are nearly always outside.',
  examples: [
    { rule: 'tank_floor_area("rectangle", 900 mm, 445 mm, 0 mm, 0 mm)', gives: '0.4005 m2' },
    { rule: 'tank_floor_area("bow", 890 mm, 390 mm, 70 mm, 0 mm)', gives: '0.388838 m2' },
    { rule: 'tank_floor_area("hexagon", 300 mm, 300 mm, 0 mm, 0 mm)', gives: '0.233827 m2' },
    { rule: 'tank_floor_area("corner", 580 mm, 580 mm, 0 mm, 250 mm)', gives: '0.28195 m2' },
    { rule: 'tank_floor_area("cylinder", 400 mm, 400 mm, 0 mm, 0 mm)', gives: '0.125664 m2' },
  ],
  source: 'geometry',
  compute: (sizes) => onFloor(sizes, (floor) => floor.area / 1e6),
});
