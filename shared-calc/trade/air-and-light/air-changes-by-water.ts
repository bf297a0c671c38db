import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction, type Answer } from '#shared-calc/trade/trade-function.ts';
import { vapourGrams } from './vapour-in-air.ts';

const HOURS = 24;
const TOO_ALIKE = 2; // g/m3

interface TwoAirs {
  readonly tank_temperature: number;
  readonly tank_humidity: number;
  readonly room_temperature: number;
  readonly room_humidity: number;
}

/** g/m3 by which the tank's air is damper than the room's. */
function damperBy({ tank_temperature, tank_humidity, room_temperature, room_humidity }: TwoAirs): Answer {
  const inside = vapourGrams(tank_temperature, tank_humidity);
  const outside = vapourGrams(room_temperature, room_humidity);
  if (typeof inside !== 'number') return inside;
  return typeof outside === 'number' ? inside - outside : outside;
}

/** Air changes an hour from the water that left as vapour: `vapour_loss` turned round. */
export const airChangesByWater = tradeFunction({
  name: 'air_changes_by_water',
  title: 'Air changes by the water',
  group: 'air and light',
  args: [
    { name: 'air', takes: 'm3', low: 0.01, high: 2, says: 'air in the tank' },
    { name: 'loss', takes: 'mL/d', low: 0, high: 2000, says: 'water put in less water drained, over two weeks' },
    { name: 'tank_temperature', takes: 'degC', low: 10, high: 40, says: 'mean inside' },
    { name: 'tank_humidity', takes: 'share', low: 0.2, high: 1, says: 'mean inside' },
    { name: 'room_temperature', takes: 'degC', low: 5, high: 40, says: 'mean of the room' },
    { name: 'room_humidity', takes: 'share', low: 0, high: 1, says: 'mean of the room' },
  ],
  gives: 'each/h',
  sum: 'loss / (24 x air x (vapour inside - vapour of the room))',
  help: 'How often the air changed, from what was misted and what was drained. The soil must be as wet at the end.',
  examples: [
    { rule: 'air_changes_by_water(0.180225 m3, 49.06 mL/d, 24 degC, 90 %, 21 degC, 45 %)', gives: '1.0001 each/h' },
    { rule: 'air_changes_by_water(0.180225 m3, 98.12 mL/d, 24 degC, 90 %, 21 degC, 45 %)', gives: '2.0001 each/h' },
  ],
  source: 'moisture balance',
  cautions: ['airByWater'],
  compute: ({ air, loss, ...airs }) => {
    const wrong = notAboveZero({ Air: air }) ?? belowZero({ 'The water lost': loss });
    if (wrong) return wrong;
    const damper = damperBy(airs);
    if (typeof damper !== 'number') return damper;
    return (
      firstRefusal([[damper <= 1e-9, 'The tank must be damper than the room for this.']]) ??
      loss / (HOURS * air * damper)
    );
  },
  decides: 'Builder',
  warn: (airs) => {
    const damper = damperBy(airs);
    return typeof damper === 'number' && damper < TOO_ALIKE ? 'Too alike to tell.' : undefined;
  },
});
