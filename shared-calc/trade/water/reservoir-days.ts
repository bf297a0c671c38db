import { countDown } from '#shared-calc/trade/count-up.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Whole days that the can lasts, rounded down, at most the cap for cleaning; the cap itself if there is no mist. */
export const reservoirDays = tradeFunction({
  name: 'reservoir_days',
  title: 'Days to refill and clean the can',
  group: 'water',
  args: [
    { name: 'usable', takes: 'L', low: 0, high: 200, says: 'water that the pump can draw' },
    { name: 'mist', takes: 'mL/d', low: 0, high: 5000, says: 'mist a day' },
    { name: 'cap', takes: 'd', low: 1, high: 30, says: 'longest time between cleanings' },
  ],
  gives: 'd',
  sum: 'usable / mist, down to the whole day, at most the cap',
  help: 'When to refill and clean. The cap is for cleaning, however full the can is.',
  examples: [
    { rule: 'reservoir_days(9 L, 135 mL/d, 14 d)', gives: '14 d' },
    { rule: 'reservoir_days(9 L, 135 mL/d, 90 d)', gives: '66 d' },
  ],
  source: 'cap of 14 days: common practice, no source',
  cautions: ['reservoir'],
  compute: ({ usable, mist, cap }) =>
    belowZero({ 'Usable water': usable, Mist: mist, Cap: cap }) ??
    (mist === 0 ? cap : Math.min(cap, countDown((usable * 1000) / mist))),
});
