import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Ten years: means "does not fill". */
const NEVER_FILLS_DAYS = 3650;

/** Days until the drainage is full of mist that does not evaporate; at most 3650, which means "does not fill". */
export const drainFillDays = tradeFunction({
  name: 'drain_fill_days',
  title: 'Days until the drainage is full',
  group: 'water',
  args: [
    { name: 'capacity', takes: 'L', low: 0, high: 50, says: 'room for standing water' },
    { name: 'mist', takes: 'mL/d', low: 0, high: 5000, says: 'mist a day' },
    {
      name: 'loss',
      takes: 'mL/d',
      low: -500,
      high: 5000,
      says: 'vapour lost a day; below zero where the room adds water',
    },
  ],
  gives: 'd',
  sum: 'capacity / (mist - loss), at most 3650 d, which means it does not fill',
  help: 'When to drain. Worked for winter and summer air; the shorter one rules.',
  examples: [
    { rule: 'drain_fill_days(4.806 L, 135 mL/d, 49.06 mL/d)', gives: '55.9 d' },
    { rule: 'drain_fill_days(4.806 L, 135 mL/d, 31.36 mL/d)', gives: '46.4 d' },
    { rule: 'drain_fill_days(4.806 L, 40 mL/d, 49.06 mL/d)', gives: '3650 d' },
  ],
  source: 'water in less water out',
  cautions: ['airGuess'],
  compute: ({ capacity, mist, loss }) => {
    const wrong = belowZero({ Capacity: capacity, Mist: mist });
    if (wrong) return wrong;
    if (loss >= mist) return NEVER_FILLS_DAYS;
    return Math.min(NEVER_FILLS_DAYS, (capacity * 1000) / (mist - loss));
  },
  decides: 'Builder',
  warn: (_, days) => (days >= NEVER_FILLS_DAYS ? 'The drainage does not fill.' : undefined),
});
