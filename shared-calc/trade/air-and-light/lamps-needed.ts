import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const COUNTS_AS_MET = 0.99;

/** Whole lamps for a daily light; a shortfall under 1 % counts as met. */
export const lampsNeeded = tradeFunction({
  name: 'lamps_needed',
  title: 'Lamps needed',
  group: 'air and light',
  args: [
    { name: 'target', takes: 'mol/m2/d', low: 1, high: 15, says: 'daily light wanted' },
    { name: 'per_lamp', takes: 'mol/m2/d', low: 0.5, high: 15, says: 'daily light of one lamp' },
  ],
  gives: 'each',
  sum: '0.99 x target / per_lamp, up to the whole',
  help: 'How many lamps of this kind the plants ask for.',
  examples: [
    { rule: 'lamps_needed(5 mol/m2/d, 2.241 mol/m2/d)', gives: '3 each' },
    { rule: 'lamps_needed(5 mol/m2/d, 2.988 mol/m2/d)', gives: '2 each' },
  ],
  source: 'common practice, no source',
  cautions: ['lampHeat'],
  compute: ({ target, per_lamp }) =>
    belowZero({ 'The light wanted': target }) ??
    notAboveZero({ 'The light of one lamp': per_lamp }) ??
    countUp((COUNTS_AS_MET * target) / per_lamp),
});
