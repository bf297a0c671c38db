import { belowZero, notBelowOne, sayShare } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Loose litres, as from the bag, for placed litres. Refuses a settling of 1 or more. */
export const looseNeeded = tradeFunction({
  name: 'loose_needed',
  title: 'Loose litres needed',
  group: 'media',
  args: [
    { name: 'placed', takes: 'L', low: 0, high: 500, says: 'litres after settling in the tank' },
    { name: 'settle', takes: 'share', low: 0, high: 0.4, says: 'share lost by settling' },
    { name: 'waste', takes: 'share', low: 0, high: 0.5, says: 'share lost by spilling and sieving' },
  ],
  gives: 'L',
  sum: 'placed / (1 - settle) x (1 + waste)',
  help: 'Litres to measure out of the bag. With settling and waste forgotten one runs about 20 % short.',
  examples: [
    { rule: 'loose_needed(16.02 L, 2 %, 3 %)', gives: '16.837 L' },
    { rule: 'loose_needed(33.705 L, 0.12, 0.05)', gives: '40.216 L' },
  ],
  source: 'common practice, no source',
  cautions: ['mineralDust'],
  compute: ({ placed, settle, waste }) =>
    belowZero({ 'Placed litres': placed, Waste: waste }) ??
    notBelowOne('Settling', settle) ??
    (placed / (1 - settle)) * (1 + waste),
  decides: 'Builder',
  warn: ({ waste }) => (waste >= 1 ? sayShare('Waste', waste) : undefined),
});
