import { killRateAt, refuseSteps } from './kill-rate.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const FAR_K = 40;

/** Minutes to hold the core for this many ten-fold cuts; not rounded. Warns over 40 K from the reference. */
export const holdTime = tradeFunction({
  name: 'hold_time',
  title: 'Hold time',
  group: 'heat',
  args: [
    { name: 'log_cuts', takes: 'number', low: 0, high: 12, says: 'ten-fold cuts wanted; 6 leaves one in a million' },
    { name: 'minutes_per_cut', takes: 'min', low: 0.1, high: 60, says: 'D: minutes for one cut at the reference' },
    { name: 'reference', takes: 'degC', low: 50, high: 200, says: 'temperature of those minutes' },
    {
      name: 'step',
      takes: 'K',
      low: 4,
      high: 40,
      says: 'z: warmer by this kills ten times as fast; moist about 10, dry 23',
    },
    { name: 'temperature', takes: 'degC', low: 50, high: 200, says: 'of the core' },
  ],
  gives: 'min',
  sum: 'log_cuts x minutes_per_cut x 10 ^ ((reference - temperature) / step)',
  help: 'How long the core must be held. It begins when the core is there, never when the vessel is.',
  examples: [
    { rule: 'hold_time(6, 1.5 min, 121.1 degC, 10 K, 118.3 degC)', gives: '17.15 min' },
    { rule: 'hold_time(12, 1.5 min, 121.1 degC, 10 K, 115 degC)', gives: '73.33 min' },
    { rule: 'hold_time(6, 2 min, 160 degC, 23 K, 120 degC)', gives: '658 min' },
  ],
  source: 'definition of D and z; dry z of 23: J. Gen. Microbiol. 101:227',
  cautions: ['steamVent', 'steamOpening'],
  compute: ({ log_cuts, minutes_per_cut, reference, step, temperature }) =>
    belowZero({ 'Ten-fold cuts': log_cuts, 'The time for one cut (D)': minutes_per_cut }) ??
    refuseSteps(temperature, reference, step) ??
    (log_cuts * minutes_per_cut) / killRateAt(temperature, reference, step),
  decides: 'Grower',
  warn: ({ temperature, reference }) =>
    Math.abs(temperature - reference) > FAR_K ? 'Too far from the reference to trust.' : undefined,
});
