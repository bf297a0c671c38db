import { airPressureKpa } from './air-pressure.ts';
import { killRateAt } from './kill-rate.ts';
import { USUAL_GAUGE_KPA } from './leaf-treatment.ts';
import { saturationPressureKpa } from './saturation.ts';
import { ABOVE_SMALL_VESSEL, SMALL_VESSEL_KPA, steamTemperatureC } from './steam-temp.ts';
import { heatTargets } from '#shared-calc/trade/heat-targets.ts';
import { refused, tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

const { sterileSteam } = heatTargets;

const KPA_OF_PSI = USUAL_GAUGE_KPA / 15;

/** The core of a load counts as hot within this distance of the steam, K. */
export const CORE_BELOW_STEAM_K = 1;

/** Minutes to hold a core that is 1 K below the steam; not rounded. Refuses a core too cool to count on. */
export function steamHoldMinutes(altitude: number, gauge: number): Answer {
  const steam = steamTemperatureC(altitude, gauge);
  if (typeof steam !== 'number') return steam;
  const core = steam - CORE_BELOW_STEAM_K;
  if (core < sterileSteam.coreC) return refused(tooCool(core, altitude));
  const { reference, step } = sterileSteam.scale;
  return sterileSteam.minutes / killRateAt(core, reference, step);
}

/** kPa of gauge from which the core of a load reaches this temperature at a height. */
function gaugeFor(core: number, altitude: number): number {
  return (saturationPressureKpa(core + CORE_BELOW_STEAM_K) ?? Number.NaN) - airPressureKpa(altitude);
}

function tooCool(core: number, altitude: number): string {
  const usual = Number(steamTemperatureC(altitude, USUAL_GAUGE_KPA)) - CORE_BELOW_STEAM_K;
  const least = gaugeFor(sterileSteam.coreC, altitude) / KPA_OF_PSI;
  const one = (figure: number) => figure.toFixed(1);
  return `The core reaches ${one(core)} degC; sterile asks for ${sterileSteam.coreC} (15 psi at this height gives ${one(usual)}; the least here is ${one(Math.ceil(least * 10) / 10)} psi).`;
}

/**
 * Minutes of hold that equal 30 min at 121 degC for a core 1 K below the steam. Refuses a core below 115 degC; warns
 * over 110 kPa gauge.
 */
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
  help: 'How long the core is held in steam, counted from when it is within 1 degree of the steam. A plan rounds it up to the whole minute. A core below 115 degC is refused.',
  examples: [
    { rule: 'steam_hold(650 m, 15 psi)', gives: '50.22 min' },
    { rule: 'steam_hold(0 m, 15 psi)', gives: '38.16 min' },
  ],
  source: 'CDC Guideline for Disinfection and Sterilization in Healthcare Facilities 2008, wrapped goods',
  cautions: ['steamVent', 'steamOpening'],
  compute: ({ altitude, gauge }) => steamHoldMinutes(altitude, gauge),
  decides: 'Whoever services the vessel',
  warn: ({ gauge }) => (gauge > SMALL_VESSEL_KPA ? ABOVE_SMALL_VESSEL : undefined),
});
