import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** m/h that vapour passes from a wet surface into still air: a heat film of 3 W/m2/K by the Lewis relation. */
export const WET_SURFACE = 9;
/** m2/h: vapour creeps through loose leaves at 0.6 of its free 0.09 m2/h. */
const THROUGH_LEAVES = 0.054;
/** m/h of a leaf at night, and what strong light adds; half of that at 3 mol/m2/d. */
const LEAF_AT_NIGHT = 0.5;
const LEAF_IN_LIGHT = 3.2;
const HALF_LIGHT = 3;
const HOURS = 24;
const MM = 1000;

/** m3 of air an hour that damp soil and leaves could fill with vapour. */
export const dampPassage = tradeFunction({
  name: 'damp_passage',
  title: 'Damp passage',
  group: 'air and light',
  args: [
    { name: 'floor', takes: 'm2', low: 0, high: 3, says: 'damp floor' },
    { name: 'litter', takes: 'mm', low: 0, high: 120, says: 'leaves over it' },
    { name: 'leaf', takes: 'm2', low: 0, high: 10, says: 'leaf of all plants' },
    { name: 'light', takes: 'mol/m2/d', low: 0, high: 20, says: 'daily light at the plants' },
    { name: 'hours', takes: 'h/d', low: 0, high: 16, says: 'that the lamps are on' },
  ],
  gives: 'm3/h',
  sum: 'floor / (1 / 9 + litter / 0.054) + leaf x (0.5 + 3.2 x light / (light + 3) x hours / 24), litter in m',
  help: 'Air that damp soil and leaves could fill with vapour in an hour.',
  examples: [
    { rule: 'damp_passage(0.4005 m2, 30 mm, 0.46 m2, 5.98 mol/m2/d, 12 h/d)', gives: '1.32087 m3/h' },
    { rule: 'damp_passage(0.4005 m2, 0 mm, 0 m2, 0 mol/m2/d, 0 h/d)', gives: '3.6045 m3/h' },
  ],
  source: 'Lewis relation; leaf figures from memory',
  cautions: ['dampSoil'],
  compute: ({ floor, litter, leaf, light, hours }) =>
    belowZero({ 'The floor': floor, Litter: litter, 'The leaf area': leaf, Light: light, Hours: hours }) ??
    floor / (1 / WET_SURFACE + litter / MM / THROUGH_LEAVES) +
      leaf * (LEAF_AT_NIGHT + LEAF_IN_LIGHT * (light / (light + HALF_LIGHT)) * (hours / HOURS)),
});
