import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';
import { vapourGrams } from './vapour-in-air.ts';

const HOURS = 24;

/** mL of water a day that leave with changing air (1 g is 1 mL); negative where the room is damper, with a warning. */
export const vapourLoss = tradeFunction({
  name: 'vapour_loss',
  title: 'Vapour loss',
  group: 'air and light',
  args: [
    { name: 'air', takes: 'm3', low: 0.01, high: 2, says: 'air in the tank' },
    {
      name: 'changes',
      takes: 'each/h',
      low: 0.5,
      high: 20,
      says: 'air changes; about 1 under a closed top, 1 to 3 with a strip, tens under an open one',
    },
    { name: 'tank_temperature', takes: 'degC', low: 10, high: 40, says: 'of the air inside' },
    { name: 'tank_humidity', takes: 'share', low: 0.2, high: 1, says: 'inside' },
    { name: 'room_temperature', takes: 'degC', low: 5, high: 40, says: 'of the room' },
    { name: 'room_humidity', takes: 'share', low: 0, high: 1, says: 'of the room' },
  ],
  gives: 'mL/d',
  sum: 'air x 24 x changes x (vapour inside - vapour of the room)',
  help: 'Water that leaves as vapour in a day.',
  examples: [
    { rule: 'vapour_loss(0.180225 m3, 1 each/h, 24 degC, 90 %, 21 degC, 45 %)', gives: '49.06 mL/d' },
    { rule: 'vapour_loss(0.180225 m3, 1 each/h, 24 degC, 90 %, 23 degC, 60 %)', gives: '31.36 mL/d' },
  ],
  source: 'Bolton 1980 form of the Magnus equation; air changes worked',
  cautions: ['airGuess'],
  compute: ({ air, changes, tank_temperature, tank_humidity, room_temperature, room_humidity }) => {
    const wrong = belowZero({ Air: air, 'Air changes': changes });
    if (wrong) return wrong;
    const inside = vapourGrams(tank_temperature, tank_humidity);
    const outside = vapourGrams(room_temperature, room_humidity);
    if (typeof inside !== 'number') return inside;
    return typeof outside === 'number' ? air * HOURS * changes * (inside - outside) : outside;
  },
  decides: 'Builder',
  warn: (_, loss) => (loss < 0 ? 'The room adds water; loss is negative.' : undefined),
});
