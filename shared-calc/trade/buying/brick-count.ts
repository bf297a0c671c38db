import { countUp } from '#shared-calc/trade/count-up.ts';
import { belowZero, notAboveZero } from '#shared-calc/trade/refuse-figure.ts';
import { tradeFunction } from '#shared-calc/trade/trade-function.ts';

/** Whole bricks of pressed coir for a number of hydrated litres, rounded up. */
export const brickCount = tradeFunction({
  name: 'brick_count',
  title: 'Bricks of coir',
  group: 'buying',
  args: [
    { name: 'need', takes: 'L', low: 0, high: 500, says: 'hydrated litres needed' },
    { name: 'yield', takes: 'L', low: 5, high: 80, says: 'hydrated litres of one brick' },
  ],
  gives: 'each',
  sum: 'need / yield, up to the whole brick',
  help: 'Hydrate a brick before measuring parts; 650 g gives 7 to 11 litres.',
  examples: [
    { rule: 'brick_count(13.7 L, 9 L)', gives: '2 each' },
    { rule: 'brick_count(70 L, 70 L)', gives: '1 each' },
  ],
  source: 'yields from memory',
  cautions: ['coirSalt'],
  compute: ({ need, yield: litres }) =>
    belowZero({ Need: need }) ?? notAboveZero({ Yield: litres }) ?? countUp(need / litres),
});
