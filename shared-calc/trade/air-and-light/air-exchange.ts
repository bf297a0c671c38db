import { firstRefusal, type Refusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';
import { saturatedHectopascals } from './vapour-in-air.ts';

const GRAVITY = 9.80665; // m/s2
const PRESSURE = 1013.25; // hPa
/** Taken for the tank's own air. Between 60 and 95 % the flow moves by 12 % at most. */
const TANK_HUMIDITY = 0.8;
/** Two-way flow through one strip: 0.055 of Epstein's round hole, by area. */
const TWO_WAY = 0.07;
/** Discharge of a sharp-edged opening with flow in one direction. */
const ONE_WAY = 0.6;
/** Single-sided rule of BS 5925 with air of 0.1 m/s, in m/s per m2 of opening. */
const DRAUGHT = 0.025 * 0.1;
const SECONDS = 3600;
const MM = 1000;
const MOST_WARMER = 10;
const FORMULA = [-100, 100] as const;

/** What warm damp air does at a tank's openings: m2, mm, degC, and a share. */
interface Openings {
  readonly top: number;
  readonly slit: number;
  readonly low: number;
  readonly height: number;
  readonly tank_temperature: number;
  readonly room_temperature: number;
  readonly room_humidity: number;
}

/** The flows are in m3/s; `lightness` in m/s2, above zero if the tank's air is lighter than the room's. */
interface Flows {
  readonly lightness: number;
  readonly twoWay: number;
  readonly rising: number;
  readonly draught: number;
}

function flowsOf(given: Openings): Flows {
  const tank = density(given.tank_temperature, TANK_HUMIDITY);
  const lightness = GRAVITY * (density(given.room_temperature, given.room_humidity) / tank - 1);
  const { top, low } = given;
  const both = top > 0 && low > 0 ? 1 / Math.hypot(1 / top, 1 / low) : 0;
  return {
    lightness,
    twoWay: TWO_WAY * top * Math.sqrt(Math.max(0, lightness) * (given.slit / MM)),
    rising: ONE_WAY * both * Math.sqrt(2 * Math.abs(lightness) * (given.height / MM)),
    draught: DRAUGHT * top,
  };
}

/** Relative only: hPa over K. */
function density(degC: number, humidity: number): number {
  return (PRESSURE - 0.378 * saturatedHectopascals(degC) * humidity) / (273.15 + degC);
}

function outsideFormula(temperatures: readonly number[]): Refusal | undefined {
  const [least, most] = FORMULA;
  const outside = temperatures.some((degC) => degC <= least || degC >= most);
  return firstRefusal([[outside, `The air formula needs air from ${least} to ${most} C.`]]);
}

/**
 * m3 of room air an hour through the openings, without wind. A strong flow from the low to the high opening stops the
 * two-way one, so the larger of them counts, and the draught of a still room on top.
 */
export const airExchange = tradeFunction({
  name: 'air_exchange',
  title: 'Air exchange',
  group: 'air and light',
  args: [
    { name: 'top', takes: 'm2', low: 0, high: 1, says: 'free area of the openings in the top' },
    { name: 'slit', takes: 'mm', low: 0, high: 600, says: 'width of the strip in the top' },
    { name: 'low', takes: 'm2', low: 0, high: 0.1, says: 'free area of the openings low in the front' },
    { name: 'height', takes: 'mm', low: 100, high: 1000, says: 'from the low to the high openings' },
    { name: 'tank_temperature', takes: 'degC', low: 10, high: 40, says: 'of the air inside' },
    { name: 'room_temperature', takes: 'degC', low: 5, high: 40, says: 'of the room' },
    { name: 'room_humidity', takes: 'share', low: 0, high: 1, says: 'of the room' },
  ],
  gives: 'm3/h',
  sum:
    'larger of two-way 0.07 x top x root(lightness x slit) and rising 0.6 x both x root(2 x lightness x height), ' +
    'and 0.0025 m/s x top for draught; both: 1 / root(1 / top^2 + 1 / low^2); ' +
    'lightness: 9.80665 m/s2 x (density of the room / density of the tank at 80 % - 1)',
  help: 'Room air that comes in through the openings in an hour, with no wind.',
  examples: [
    {
      rule: 'air_exchange(0.00927 m2, 25 mm, 0.00027 m2, 450 mm, 23.2 degC, 21 degC, 45 %)',
      gives: '0.27203 m3/h',
    },
    {
      rule: 'air_exchange(0.00927 m2, 25 mm, 0.00315 m2, 305 mm, 23.8 degC, 21 degC, 45 %)',
      gives: '1.96291 m3/h',
    },
  ],
  source:
    'two-way flow: Epstein 1988, factor from memory; rising flow: ASHRAE Fundamentals 1997 and Linden 1999, ' +
    'from memory; draught: BS 5925, from memory',
  cautions: ['airModel'],
  compute: (given) => {
    const { top, slit, low, height, tank_temperature, room_temperature, room_humidity } = given;
    const wrong =
      belowZero({ 'The top opening': top, 'The strip': slit, 'The low opening': low, Height: height }) ??
      outsideShare({ 'Room humidity': room_humidity }) ??
      outsideFormula([tank_temperature, room_temperature]);
    if (wrong) return wrong;
    const { twoWay, rising, draught } = flowsOf(given);
    return (Math.max(twoWay, rising) + draught) * SECONDS;
  },
  decides: 'Builder',
  warn: (given) => {
    if (given.tank_temperature - given.room_temperature > MOST_WARMER + 1e-9)
      return 'More than 10 K: the sum was made for 0 to 10.';
    return flowsOf(given).lightness < 0 ? 'Cold air stays in: only draught and the doors change it.' : undefined;
  },
});
