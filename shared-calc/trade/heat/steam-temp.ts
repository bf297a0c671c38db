import { airPressureKpa, refuseAltitude } from './air-pressure.ts';
import { LEAST_STEAM_KPA, MOST_STEAM_KPA, saturationTemperatureC } from './saturation.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { refused, tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';

/** Limit of small kitchen-sized vessels, kPa gauge; above it its maker says what it stands. */
export const SMALL_VESSEL_KPA = 110;
export const ABOVE_SMALL_VESSEL = 'Above the 15 psi class of small vessels: only as the maker of the vessel says.';

/** degC of saturated steam in a vessel at this gauge pressure, kPa, at a height in m. */
export function steamTemperatureC(altitude: number, gauge: number): Answer {
  const tooFar = refuseAltitude(altitude);
  if (tooFar) return tooFar;
  const pressure = airPressureKpa(altitude) + gauge;
  const says = `No steam at ${sayPlain(pressure, 1)} kPa: the steam formula runs from ${LEAST_STEAM_KPA} to ${MOST_STEAM_KPA} kPa.`;
  return saturationTemperatureC(pressure) ?? refused(says);
}

/** degC of saturated steam at air pressure plus gauge, the air driven out. Warns over 110 kPa gauge. */
export const steamTemp = tradeFunction({
  name: 'steam_temp',
  title: 'Steam temperature',
  group: 'heat',
  args: [
    { name: 'altitude', takes: 'm', low: -400, high: 5000, says: 'height above the sea' },
    { name: 'gauge', takes: 'kPa', low: 0, high: SMALL_VESSEL_KPA, says: 'reading of the gauge, or the weight' },
  ],
  gives: 'degC',
  sum: 'boiling temperature of water at the air pressure plus the gauge reading',
  help: 'How hot the steam is in a pressure vessel. Vent 10 min first: air left inside makes it cooler at the same reading.',
  examples: [
    { rule: 'steam_temp(0 m, 15 psi)', gives: '120.955 degC' },
    { rule: 'steam_temp(650 m, 15 psi)', gives: '119.763 degC' },
    { rule: 'steam_temp(1500 m, 15 psi)', gives: '118.263 degC' },
  ],
  source: 'IAPWS R7-97(2012), region 4',
  cautions: ['steamVent', 'steamOpening'],
  compute: ({ altitude, gauge }) => steamTemperatureC(altitude, gauge),
  decides: 'Whoever services the vessel',
  warn: ({ gauge }) => {
    if (gauge > SMALL_VESSEL_KPA) return ABOVE_SMALL_VESSEL;
    return gauge < 0 ? 'A gauge below zero: the vessel would be under vacuum.' : undefined;
  },
});
