import { firstRefusal, type Refusal } from '#shared-calc/trade/first-refusal.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const SEA_LEVEL_KPA = 101.325;
const FALL_PER_METRE = 0.0065 / 288.15; // K/m over the K of sea level
const EXPONENT = 5.255876;
const LOWEST_M = -5000;
const HIGHEST_M = 11000; // end of the range where temperature falls linearly

/** kPa of the standard atmosphere at a height in m (geopotential, below 11 km). */
export function airPressureKpa(altitude: number): number {
  return SEA_LEVEL_KPA * (1 - FALL_PER_METRE * altitude) ** EXPONENT;
}

/** Refuses a height at which the standard atmosphere has another formula. */
export function refuseAltitude(altitude: number): Refusal | undefined {
  const says = `The air formula runs from ${LOWEST_M} to ${HIGHEST_M} m; you gave ${sayPlain(altitude, 1)} m.`;
  return firstRefusal([[altitude < LOWEST_M || altitude > HIGHEST_M, says]]);
}

/** kPa of still air at a height, of the standard atmosphere. Refuses heights beyond -5,000 to 11,000 m. */
export const airPressure = tradeFunction({
  name: 'air_pressure',
  title: 'Air pressure',
  group: 'heat',
  args: [{ name: 'altitude', takes: 'm', low: -400, high: 5000, says: 'height above the sea' }],
  gives: 'kPa',
  sum: '101.325 x (1 - 0.0065 x altitude / 288.15) ^ 5.255876',
  help: 'Usual air pressure at a height; water boils cooler and steam is cooler where it is low.',
  examples: [
    { rule: 'air_pressure(650 m)', gives: '93.756 kPa' },
    { rule: 'air_pressure(1500 m)', gives: '84.556 kPa' },
    { rule: 'air_pressure(0 m)', gives: '101.325 kPa' },
  ],
  source: 'ISO 2533, ICAO Doc 7488, US standard atmosphere 1976',
  compute: ({ altitude }) => refuseAltitude(altitude) ?? airPressureKpa(altitude),
});
