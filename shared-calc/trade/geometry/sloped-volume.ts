import { belowZero, sayMm } from '#shared-calc/trade/refuse-figure.ts';
import { floorOf } from './tank-floor.ts';
import { floorArguments, onFloor } from './tank-shape.ts';
import { firstRefusal, type Refusal } from '#shared-calc/trade/first-refusal.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Above this slope, rise over run, damp mix slides without terraces. */
const STEEPEST = 0.55;

/** mm */
interface Slope {
  readonly front: number;
  readonly rise: number;
}

/** Refuses soil that would lie below the capping, or fall to the back. */
export function wrongSlope({ front, rise }: Slope): Refusal | undefined {
  const says = `The soil at the front is ${sayMm(-front)} below the capping. Thin the drainage or capping.`;
  return firstRefusal([[front < 0, says]]) ?? belowZero({ Rise: rise });
}

/**
 * Litres of soil that rises evenly from the front to the back: floor x depth at the floor's centroid. Exact for a plane
 * slope. In a corner tank it rises along the diagonal, to the back corner. Warns over 0.55.
 */
export const slopedVolume = tradeFunction({
  name: 'sloped_volume',
  title: 'Sloped volume',
  group: 'geometry',
  args: [
    ...floorArguments,
    { name: 'front', takes: 'mm', low: 40, high: 200, says: 'depth of soil at the front' },
    { name: 'rise', takes: 'mm', low: 0, high: 300, says: 'back minus front' },
  ],
  gives: 'L',
  sum: 'floor x (front + rise x (1 - share)); share: where the centre of the floor lies, from the back (0) to the front (1)',
  help: 'Litres of soil under a plane slope. Half the rise counts only where the floor is as wide at the back as in front.',
  examples: [
    { rule: 'sloped_volume("rectangle", 900 mm, 445 mm, 0 mm, 0 mm, 90 mm, 40 mm)', gives: '44.055 L' },
    { rule: 'sloped_volume("corner", 580 mm, 580 mm, 0 mm, 250 mm, 80 mm, 60 mm)', gives: '29.068 L' },
  ],
  source: 'geometry; steepest slope of damp mix from memory',
  cautions: ['buriedBackground'],
  compute: ({ front, rise, ...sizes }) =>
    wrongSlope({ front, rise }) ??
    onFloor(sizes, (floor) => (floor.area / 1e6) * (front + rise * (1 - floor.centroid))),
  decides: 'Builder',
  warn: ({ rise, ...sizes }) =>
    rise / floorOf(sizes).run > STEEPEST + 1e-9 ? 'Slope steeper than damp mix holds; add a terrace.' : undefined,
});
