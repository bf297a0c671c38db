import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';
import { wrongWalls } from './panel-run.ts';
import { wrongSlope } from './sloped-volume.ts';
import { floorArguments, onFloor } from './tank-shape.ts';

const THICKEST = 60;

/** Litres of soil whose room a background takes that goes down to the capping: along each wall by its mean depth. */
export const panelDisplacement = tradeFunction({
  name: 'panel_displacement',
  title: 'Soil displaced by the background',
  group: 'geometry',
  args: [
    ...floorArguments,
    { name: 'walls', takes: 'each', low: 0, high: 3, says: '1 the back, 3 back and sides' },
    { name: 'thickness', takes: 'mm', low: 0, high: THICKEST, says: 'of the background' },
    { name: 'front', takes: 'mm', low: 40, high: 200, says: 'depth of soil at the front' },
    { name: 'rise', takes: 'mm', low: 0, high: 300, says: 'back minus front' },
  ],
  gives: 'L',
  sum:
    'thickness x width x (front + rise x share) of each wall; share: how high on the slope the middle of the wall is, ' +
    'from the front (0) to the back (1)',
  help: 'Soil that a buried background replaces. Where two panels meet, the corner counts twice.',
  examples: [
    { rule: 'panel_displacement("rectangle", 900 mm, 445 mm, 0 mm, 0 mm, 3, 20 mm, 90 mm, 40 mm)', gives: '4.298 L' },
    { rule: 'panel_displacement("corner", 580 mm, 580 mm, 0 mm, 250 mm, 3, 20 mm, 80 mm, 40 mm)', gives: '3.320 L' },
  ],
  source: 'geometry',
  cautions: ['backgroundToCapping'],
  compute: ({ walls, thickness, front, rise, ...sizes }) =>
    wrongWalls(walls) ??
    wrongSlope({ front, rise }) ??
    belowZero({ Thickness: thickness }) ??
    onFloor(sizes, ({ back, side, backHeight, sideHeight }) => {
      const ofBack = walls > 0 ? back * (front + rise * backHeight) : 0;
      const ofSides = Math.max(0, walls - 1) * side * (front + rise * sideHeight);
      return (thickness * (ofBack + ofSides)) / 1e6;
    }),
  decides: 'Builder',
  warn: ({ thickness }) => (thickness > THICKEST + 1e-9 ? 'Thicker than backgrounds are; check it.' : undefined),
});
