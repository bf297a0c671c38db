import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

const DAYS_A_YEAR = 365;

/** Days until litter has thinned to its least layers, by exponential decay (Olson 1963); 0 if it already has. */
export const litterLife = tradeFunction({
  name: 'litter_life',
  title: 'Life of the litter',
  group: 'leaves',
  args: [
    { name: 'now', takes: 'number', low: 1, high: 10, says: 'layers of leaves now' },
    { name: 'least', takes: 'number', low: 1, high: 5, says: 'layers at which to top up' },
    { name: 'decay', takes: 'each/yr', low: 0.3, high: 2, says: 'decay a year' },
  ],
  gives: 'd',
  sum: 'ln(layers now / least layers) / decay x 365',
  help: 'When to top up. Six layers at a decay of 0.69 a year are three after about a year.',
  examples: [
    { rule: 'litter_life(4.60517, 3, 0.9 each/yr)', gives: '173.8 d' },
    { rule: 'litter_life(6, 3, 0.69 each/yr)', gives: '366.7 d' },
  ],
  source: 'Olson 1963; decay in a tank from memory',
  cautions: ['litterDecay'],
  compute: ({ now, least, decay }) => {
    const wrong = belowZero({ 'Layers now': now }) ?? notAboveZero({ 'Least layers': least, Decay: decay });
    return wrong ?? (now <= least ? 0 : (Math.log(now / least) / decay) * DAYS_A_YEAR);
  },
  decides: 'Grower',
  warn: ({ now, least }) => (now < least ? 'The litter is already thinner than that; top it up now.' : undefined),
});
