import { belowZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** umol/m2/s of plant light from a lux reading (a plain number), by the lamp's own factor for one lux. */
export const luxToPpfd = tradeFunction({
  name: 'lux_to_ppfd',
  title: 'Lux to plant light',
  group: 'air and light',
  args: [
    { name: 'lux', takes: 'number', low: 0, high: 100000, says: 'reading of the meter' },
    {
      name: 'per_lux',
      takes: 'umol/m2/s',
      low: 0.01,
      high: 0.02,
      says: 'for one lux: sun 0.0185, cool white tube 0.0135, white lamp bar 0.0145',
    },
  ],
  gives: 'umol/m2/s',
  sum: 'lux x per_lux',
  help: 'Turns a lux reading into plant light. The factor belongs to the lamp: lux alone does not tell.',
  examples: [
    { rule: 'lux_to_ppfd(6000, 0.0145 umol/m2/s)', gives: '87 umol/m2/s' },
    { rule: 'lux_to_ppfd(2000, 0.0185 umol/m2/s)', gives: '37 umol/m2/s' },
  ],
  source: 'factors from memory',
  cautions: ['lightAtSoil'],
  compute: ({ lux, per_lux }) => belowZero({ Lux: lux, 'The factor': per_lux }) ?? lux * per_lux,
});
