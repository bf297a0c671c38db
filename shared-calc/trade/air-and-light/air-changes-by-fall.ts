import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { outsideShare } from '#shared-calc/trade/refuse-share.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';
import { vapourGrams } from './vapour-in-air.ts';

const MINUTES = 60;
const NEAR_FULL = 0.95;
const LAGS = 10; // min

/**
 * Air changes an hour from the fall of humidity after a misting. Air of a planted tank falls to its rest, not to the
 * room: soil and plants keep feeding it, and the rest tells how strongly.
 */
export const airChangesByFall = tradeFunction({
  name: 'air_changes_by_fall',
  title: 'Air changes by the fall',
  group: 'air and light',
  args: [
    { name: 'rest', takes: 'share', low: 0.3, high: 0.95, says: 'humidity just before misting, lamps on 3 h' },
    { name: 'first', takes: 'share', low: 0.3, high: 1, says: 'humidity while it falls' },
    { name: 'second', takes: 'share', low: 0.3, high: 1, says: 'humidity later, still falling' },
    { name: 'between', takes: 'min', low: 10, high: 120, says: 'from the first reading to the second' },
    { name: 'tank_temperature', takes: 'degC', low: 10, high: 40, says: 'of the air inside' },
    { name: 'room_temperature', takes: 'degC', low: 5, high: 40, says: 'of the room' },
    { name: 'room_humidity', takes: 'share', low: 0, high: 1, says: 'of the room' },
  ],
  gives: 'each/h',
  sum:
    'ln((first - rest) / (second - rest)) / hours between x (saturated - rest) / (saturated - room), ' +
    'the last two in g/m3 of vapour',
  help: 'How often the air changes, from three readings of one evening: the rest before misting, and two after it.',
  examples: [
    { rule: 'air_changes_by_fall(80 %, 94 %, 85 %, 20 min, 25 degC, 21 degC, 45 %)', gives: '0.9622 each/h' },
    { rule: 'air_changes_by_fall(80 %, 94 %, 85 %, 40 min, 25 degC, 21 degC, 45 %)', gives: '0.4811 each/h' },
  ],
  source: 'decay of a tracer, with soil and plants that keep evaporating',
  cautions: ['airByFall'],
  compute: ({ rest, first, second, between, tank_temperature, room_temperature, room_humidity }) => {
    const wrong =
      outsideShare({ 'The rest': rest, 'The first reading': first, 'The second reading': second }) ??
      firstRefusal([
        [!(first > second && second > rest), 'The second reading must lie between the first and the rest.'],
        [rest >= 1, 'Air that rests full tells nothing.'],
      ]) ??
      notAboveZero({ 'The time between': between });
    if (wrong) return wrong;
    const saturated = vapourGrams(tank_temperature, 1);
    const room = vapourGrams(room_temperature, room_humidity);
    if (typeof saturated !== 'number') return saturated;
    if (typeof room !== 'number') return room;
    const resting = saturated * rest;
    return (
      firstRefusal([[resting <= room, 'The tank at rest must be damper than the room for this.']]) ??
      (Math.log((first - rest) / (second - rest)) / (between / MINUTES)) * ((saturated - resting) / (saturated - room))
    );
  },
  decides: 'Builder',
  warn: ({ rest, between }) => {
    if (rest > NEAR_FULL + 1e-9) return 'Too near full to tell.';
    return between < LAGS - 1e-9 ? 'The hygrometer lags; wait longer.' : undefined;
  },
});
