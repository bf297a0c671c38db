import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Days until a culture has this many animals; 0 if it already has them. Not rounded. */
export const daysToCount = tradeFunction({
  name: 'days_to_count',
  title: 'Days to a count',
  group: 'cultures',
  args: [
    { name: 'start', takes: 'each', low: 1, high: 20000, says: 'animals put in' },
    { name: 'target', takes: 'each', low: 1, high: 50000, says: 'animals wanted' },
    { name: 'room', takes: 'each', low: 50, high: 50000, says: 'what the tub can hold' },
    { name: 'rate', takes: 'each/d', low: 0.01, high: 0.2, says: 'growth a day while there is room; 7 %/d is 0.07' },
  ],
  gives: 'd',
  sum: 'ln((room / start - 1) / (room / target - 1)) / rate',
  help: 'How long a culture takes to grow to a count.',
  examples: [
    { rule: 'days_to_count(300, 4000, 8000, 7 %/d)', gives: '46.4 d' },
    { rule: 'days_to_count(10, 200, 600, 2.5 %/d)', gives: '135.4 d' },
  ],
  source: 'logistic growth; rates from memory',
  compute: ({ start, target, room, rate }) => {
    const full = `The target of ${sayPlain(target)} must stay below the room for ${sayPlain(room)}.`;
    const wrong =
      belowZero({ Target: target }) ?? firstRefusal([[target >= room, full]]) ?? notAboveZero({ 'The start': start });
    if (wrong) return wrong;
    if (start >= target) return 0;
    return notAboveZero({ 'Growth a day': rate }) ?? Math.log((room / start - 1) / (room / target - 1)) / rate;
  },
});
