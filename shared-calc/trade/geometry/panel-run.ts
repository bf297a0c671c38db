import { onFloor, wallArguments } from './tank-shape.ts';
import { firstRefusal, type Refusal } from '#shared-calc/trade/first-refusal.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Refuses a number of walls that no background has. */
export function wrongWalls(walls: number): Refusal | undefined {
  const says = 'Walls are 0 for none, 1 for the back, 2 for back and one side, 3 for back and sides.';
  return firstRefusal([[![0, 1, 2, 3].includes(walls), says]]);
}

/** Flat wall that a background covers, mm: none, the back, the back and one side, or the back and both. */
export const panelRun = tradeFunction({
  name: 'panel_run',
  title: 'Width of the background',
  group: 'geometry',
  args: [...wallArguments, { name: 'walls', takes: 'each', low: 0, high: 3, says: '1 the back, 3 back and sides' }],
  gives: 'mm',
  sum:
    'back + (walls - 1) x side; rectangle and bow: length and depth; corner: two sides and the return; ' +
    'hexagon: one side each; cylinder: no flat wall',
  help: 'Width of flat glass to cover. The front stays clear; a cylinder has no flat wall and takes none.',
  examples: [
    { rule: 'panel_run("rectangle", 900 mm, 445 mm, 0 mm, 1)', gives: '900 mm' },
    { rule: 'panel_run("rectangle", 900 mm, 445 mm, 0 mm, 3)', gives: '1790 mm' },
    { rule: 'panel_run("corner", 580 mm, 580 mm, 250 mm, 3)', gives: '1660 mm' },
  ],
  source: 'geometry',
  cautions: ['buriedBackground'],
  compute: ({ walls, ...sizes }) =>
    wrongWalls(walls) ??
    onFloor({ ...sizes, bow: 0 }, ({ back, side }) => (walls === 0 ? 0 : back + (walls - 1) * side)),
});
