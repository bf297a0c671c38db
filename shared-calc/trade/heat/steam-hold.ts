import { killRateAt } from './kill-rate.ts';
import { ABOVE_SMALL_VESSEL, SMALL_VESSEL_KPA, steamTemperatureC } from './steam-temp.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

/** The wrapped-goods schedule of steam sterilising: 30 min at 121 degC, converted to other temperatures with z 10 K. */
export const WRAPPED_GOODS = {
  minutes: 30,
  reference: 121,
  step: 10,
  says: '30 min at 121 degC (wrapped goods), z 10 K',
} as const;

/** The core of a load counts as hot within this distance of the steam, K. */
export const CORE_BELOW_STEAM_K = 1;

/** Minutes to hold a core that is 1 K below the steam; not rounded. */
export function steamHoldMinutes(altitude: number, gauge: number): Answer {
  const steam = steamTemperatureC(altitude, gauge);
  if (typeof steam !== 'number') return steam;
  return WRAPPED_GOODS.minutes / killRateAt(steam - CORE_BELOW_STEAM_K, WRAPPED_GOODS.reference, WRAPPED_GOODS.step);
}

/** Minutes of hold that equal 30 min at 121 degC for a core 1 K below the steam. Warns over 110 kPa gauge. */
export const steamHold = tradeFunction({
  name: 'steam_hold',
  title: 'Steam hold',
  group: 'heat',
  args: [
    { name: 'altitude', takes: 'm', low: -400, high: 5000, says: 'height above the sea' },
    { name: 'gauge', takes: 'kPa', low: 0, high: SMALL_VESSEL_KPA, says: 'reading of the gauge, or the weight' },
  ],
  gives: 'min',
  sum: '30 / 10 ^ ((steam temperature - 1 - 121) / 10)',
  help: 'How long the core is held in steam, counted from when it is within 1 degree of the steam. A plan rounds it up to the whole minute.',
  examples: [
    { rule: 'steam_hold(650 m, 15 psi)', gives: '50.22 min' },
    { rule: 'steam_hold(0 m, 15 psi)', gives: '38.16 min' },
  ],
  source: 'CDC Guideline for Disinfection and Sterilization in Healthcare Facilities 2008, wrapped goods',
  caution: 'Only with vented steam and a core probe.',
  decides: "Vessel maker's plate",
  compute: ({ altitude, gauge }) => steamHoldMinutes(altitude, gauge),
  warn: ({ gauge }) => (gauge > SMALL_VESSEL_KPA ? ABOVE_SMALL_VESSEL : undefined),
});
