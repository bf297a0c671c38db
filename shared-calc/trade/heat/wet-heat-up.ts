import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Heats of water: kJ to warm 1 kg by 1 K, and to boil off 1 kg. IAPWS values, from memory. */
export const WATER_KJ_PER_KG_K = 4.19;
export const BOIL_OFF_KJ_PER_KG = 2257;
const BOILING_C = 100;
const SECONDS = 60;

/** Minutes to heat this many kJ into a load. */
export function minutesOf(kJ: number, watts: number): number {
  return (kJ * 1000) / watts / SECONDS;
}

/**
 * Minutes in which the water of wet leaves is heated, or in an open tray dried off. Refuses a target that is no warmer
 * than the start, and one of 100 degC or more under cover.
 */
export const wetHeatUp = tradeFunction({
  name: 'wet_heat_up',
  title: 'Wet heat-up',
  group: 'heat',
  args: [
    { name: 'water', takes: 'g', low: 0, high: 3000, says: 'in and on the leaves' },
    { name: 'power', takes: 'W', low: 100, high: 1500, says: 'that reaches the leaves' },
    { name: 'tray', takes: ['open', 'covered'], says: 'how the tray stands in the oven' },
    { name: 'start', takes: 'degC', low: 0, high: 60, says: 'of the leaves at first' },
    { name: 'target', takes: 'degC', low: 40, high: 120, says: 'of the core' },
  ],
  gives: 'min',
  sum: 'covered: water x 4.19 x (target - start) / power; open: water x (4.19 x (100 - start) + 2257) / power',
  help: 'How long the water in wet leaves takes to heat; in an open tray all of it has to leave first.',
  examples: [
    { rule: 'wet_heat_up(460 g, 300 W, "open", 20 degC, 90 degC)', gives: '66.25 min' },
    { rule: 'wet_heat_up(460 g, 300 W, "covered", 20 degC, 90 degC)', gives: '7.50 min' },
  ],
  source: 'heats of water (IAPWS), values from memory',
  cautions: ['ovenPower', 'boilingWater'],
  compute: ({ water, power, tray, start, target }) => {
    const covered = tray === 'covered';
    const wrong =
      belowZero({ Water: water }) ??
      notAboveZero({ 'The power': power }) ??
      firstRefusal([
        [target <= start, 'The target must be warmer than the start.'],
        [covered && target >= BOILING_C, 'Covered and wet, leaves stay below 100 C: give a cooler target.'],
      ]);
    if (wrong) return wrong;
    const each = covered
      ? WATER_KJ_PER_KG_K * (target - start)
      : WATER_KJ_PER_KG_K * (BOILING_C - start) + BOIL_OFF_KJ_PER_KG;
    return minutesOf((water / 1000) * each, power);
  },
});
