import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Animals after some days in a tub with room for more than it starts with; not rounded. */
export function grownCount(start: number, room: number, rate: number, days: number): number {
  return start === 0 ? 0 : room / (1 + (room / start - 1) * Math.exp(-rate * days));
}

/** Animals after a time in a tub of this capacity; not rounded. Refuses a start above the capacity. */
export const growCount = tradeFunction({
  name: 'grow_count',
  title: 'Grown count',
  group: 'cultures',
  args: [
    { name: 'start', takes: 'each', low: 1, high: 20000, says: 'animals put in' },
    { name: 'room', takes: 'each', low: 50, high: 50000, says: 'what the tub can hold' },
    { name: 'rate', takes: 'each/d', low: 0.01, high: 0.2, says: 'growth a day while there is room; 7 %/d is 0.07' },
    { name: 'time', takes: 'd', low: 0, high: 365, says: 'from the start' },
  ],
  gives: 'each',
  sum: 'room / (1 + (room / start - 1) x e ^ (-rate x time))',
  help: 'How many animals a culture has after a time. Growth slows as the tub fills up.',
  examples: [
    { rule: 'grow_count(500, 8000, 7 %/d, 30 d)', gives: '2820.0 each' },
    { rule: 'grow_count(10, 600, 2.5 %/d, 90 d)', gives: '83.1 each' },
  ],
  source: 'logistic growth; rates from memory',
  cautions: ['microfauna', 'neverRelease'],
  compute: ({ start, room, rate, time }) => {
    const wrong =
      belowZero({ 'The start': start, Room: room, 'Growth a day': rate, Time: time }) ??
      firstRefusal([[start > room, 'More animals than the tub can hold.']]);
    return wrong ?? grownCount(start, room, rate, time);
  },
});
