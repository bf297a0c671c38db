import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';
import { WET_SURFACE } from './damp-passage.ts';
import { vapourGrams } from './vapour-in-air.ts';

const HOURS = 24;
/** Like films on both sides of the glass, so it is half as much warmer than the room as the tank. */
const GLASS_BETWEEN = 0.5;
const DRY_ROOM = 0.3;

interface Balanced {
  /** Share before it is cut off at 1. */
  readonly humidity: number;
  /** The glass is below the dew point and takes vapour out of the air. */
  readonly fogs: boolean;
}

/** Flow and passage in m3/h, vapour in g/m3. */
interface Balance {
  readonly flow: number;
  readonly damp: number;
  /** g/h that mist adds. */
  readonly mist: number;
  /** Passage to the glass. */
  readonly toGlass: number;
  readonly saturated: number;
  readonly atGlass: number;
  readonly room: number;
  readonly glassIsColder: boolean;
}

/** What comes from damp surfaces, the room and mist equals what leaves with the air, and what runs down the glass. */
function balanceOf({ flow, damp, mist, toGlass, saturated, atGlass, room, glassIsColder }: Balance): Balanced {
  const comes = damp * saturated + flow * room + mist;
  const withoutGlass = comes / (damp + flow);
  const fogs = glassIsColder && toGlass > 0 && withoutGlass > atGlass;
  const inAir = fogs ? (comes + toGlass * atGlass) / (damp + flow + toGlass) : withoutGlass;
  return { humidity: inAir / saturated, fogs };
}

interface Given {
  readonly flow: number;
  readonly damp: number;
  readonly wetting: number;
  readonly tank_temperature: number;
  readonly room_temperature: number;
  readonly room_humidity: number;
  readonly glass: number;
}

function worked(given: Given): Balanced | { readonly refused: string } {
  const { flow, damp, tank_temperature: tank, room_temperature: room } = given;
  if (flow + damp === 0) return { humidity: 1, fogs: false };
  const saturated = vapourGrams(tank, 1);
  const atGlass = vapourGrams(room + GLASS_BETWEEN * (tank - room), 1);
  const ofRoom = vapourGrams(room, given.room_humidity);
  if (typeof saturated !== 'number') return saturated;
  if (typeof atGlass !== 'number') return atGlass;
  if (typeof ofRoom !== 'number') return ofRoom;
  const mist = given.wetting / HOURS;
  const toGlass = WET_SURFACE * given.glass;
  return balanceOf({ flow, damp, mist, toGlass, saturated, atGlass, room: ofRoom, glassIsColder: room < tank });
}

/** The humidity at which a tank comes to rest, a share; at most 1. */
export const steadyHumidity = tradeFunction({
  name: 'steady_humidity',
  title: 'Steady humidity',
  group: 'air and light',
  args: [
    { name: 'flow', takes: 'm3/h', low: 0, high: 100, says: 'room air that comes in: air_exchange' },
    { name: 'damp', takes: 'm3/h', low: 0, high: 30, says: 'air that soil and plants could fill: damp_passage' },
    { name: 'wetting', takes: 'mL/d', low: 0, high: 2000, says: 'mist that stays on leaves and litter' },
    { name: 'tank_temperature', takes: 'degC', low: 10, high: 40, says: 'of the air inside' },
    { name: 'room_temperature', takes: 'degC', low: 5, high: 40, says: 'of the room' },
    { name: 'room_humidity', takes: 'share', low: 0, high: 1, says: 'of the room' },
    { name: 'glass', takes: 'm2', low: 0, high: 6, says: 'open glass that can fog' },
  ],
  gives: 'share',
  sum:
    'vapour in the tank / vapour of saturated air, at most 1; vapour: (damp x saturated + flow x room + wetting / 24) ' +
    '/ (damp + flow); where the glass fogs, 9 x glass joins both, with the vapour of saturated air at the glass, ' +
    'which is half way between room and tank',
  help: 'The mean humidity that soil, plants, mist, room air and glass come to between them.',
  examples: [
    { rule: 'steady_humidity(0.27 m3/h, 1.32 m3/h, 0 mL/d, 25.4 degC, 21 degC, 45 %, 1.143 m2)', gives: '88.376 %' },
    { rule: 'steady_humidity(0.27 m3/h, 1.32 m3/h, 0 mL/d, 25.4 degC, 21 degC, 45 %, 0 m2)', gives: '88.962 %' },
  ],
  source: 'moisture balance; passage to glass by the Lewis relation',
  cautions: ['meanHumidity'],
  compute: (given) => {
    const { flow, damp, wetting, room_humidity, glass } = given;
    const wrong =
      belowZero({ 'Air flow': flow, 'The damp passage': damp, Wetting: wetting, Glass: glass }) ??
      outsideShare({ 'Room humidity': room_humidity });
    if (wrong) return wrong;
    const found = worked(given);
    return 'refused' in found ? found : Math.min(1, found.humidity);
  },
  decides: 'Experienced keeper',
  warn: (given, answer) => {
    const found = worked(given);
    if ('refused' in found) return undefined;
    if (found.humidity > 1) return 'Full: the rest of the mist drips through.';
    if (found.fogs) return 'The glass fogs and holds the air at this.';
    return answer < DRY_ROOM - 1e-9 ? 'Drier than a heated room.' : undefined;
  },
});
