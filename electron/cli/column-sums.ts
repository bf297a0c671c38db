import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import type { WorkedOrder } from './work-order.ts';

/** Cost and price of a size as if it were the whole job, with all its builds; or why they are not known yet. */
export function columnSums(
  { bench, pricing, workshop }: Pick<WorkedOrder, 'bench' | 'pricing' | 'workshop'>,
  column: string,
) {
  const sums = orderSums(bench, [column], pricing);
  if (!sums.ok) return { sums: null, fault: sayOrderFault(sums.fault) };
  const { costCoins, netCoins, grossCoins, depositCoins, hours } = sums.value.quote;
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  return {
    sums: {
      cost: money(costCoins),
      net: money(netCoins),
      tax: money(grossCoins - netCoins),
      gross: money(grossCoins),
      deposit: money(depositCoins),
      hours,
    },
  };
}
