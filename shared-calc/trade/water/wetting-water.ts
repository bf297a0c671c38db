import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { refused, tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Above this ratio, water over mix, the soil is waterlogged. */
const WETTEST = 0.6;

/**
 * Litres of water to bring placed mix from one moisture to another; refuses a target that is not wetter. Warns over
 * 0.6.
 */
export const wettingWater = tradeFunction({
  name: 'wetting_water',
  title: 'Water to wet the mix',
  group: 'water',
  args: [
    { name: 'placed', takes: 'L', low: 0, high: 500, says: 'litres of mix as placed' },
    { name: 'start', takes: 'share', low: 0, high: 0.6, says: 'water over mix volume now' },
    { name: 'target', takes: 'share', low: 0.3, high: 0.5, says: 'water over mix volume wanted' },
  ],
  gives: 'L',
  sum: 'placed x (target - start)',
  help: 'Water to mix in: damp, so that a squeeze gives a drop or two.',
  examples: [
    { rule: 'wetting_water(33.705 L, 12 %, 40 %)', gives: '9.437 L' },
    { rule: 'wetting_water(20 L, 0.1, 0.45)', gives: '7 L' },
  ],
  source: 'common practice, no source',
  cautions: ['water'],
  compute: ({ placed, start, target }) => {
    const below = belowZero({ 'Placed litres': placed, 'Start moisture': start, 'Target moisture': target });
    if (below) return below;
    if (target <= start + 1e-9) return refused('Mix is already wetter than the target; let it drain.');
    return placed * (target - start);
  },
  decides: 'Builder',
  warn: ({ target }) => (target > WETTEST + 1e-9 ? 'That is swamp, not damp.' : undefined),
});
