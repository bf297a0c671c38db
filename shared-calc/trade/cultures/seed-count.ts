import { firstRefusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Animals per square metre to put in, so that they reach the target in the time; not rounded. */
export const seedCount = tradeFunction({
  name: 'seed_count',
  title: 'Seeding',
  group: 'cultures',
  args: [
    { name: 'target', takes: 'each/m2', low: 100, high: 100000, says: 'wanted at the end of the time' },
    { name: 'room', takes: 'each/m2', low: 100, high: 100000, says: 'what a square metre can hold' },
    { name: 'rate', takes: '%/d', low: 1, high: 20, says: 'growth a day while there is room' },
    { name: 'time', takes: 'd', low: 0, high: 120, says: 'from seeding to the target' },
  ],
  gives: 'each/m2',
  sum: 'room / (1 + (room / target - 1) x e ^ (rate x time))',
  help: 'How many animals to start a tank with. Growth slows as the room fills up.',
  examples: [
    { rule: 'seed_count(8000 each/m2, 20000 each/m2, 7 %/d, 21 d)', gives: '2658.2 each/m2' },
    { rule: 'seed_count(8000 each/m2, 20000 each/m2, 5 %/d, 21 d)', gives: '3783.2 each/m2' },
  ],
  source: 'logistic growth; rates from memory',
  cautions: ['denseCup'],
  compute: ({ target, room, rate, time }) => {
    const full = `The target of ${sayPlain(target)} must stay below the room for ${sayPlain(room)}.`;
    const wrong =
      belowZero({ Target: target, Room: room, 'Growth a day': rate, Time: time }) ??
      firstRefusal([[target >= room, full]]);
    if (wrong) return wrong;
    return target === 0 ? 0 : room / (1 + (room / target - 1) * Math.exp((rate / 100) * time));
  },
});
