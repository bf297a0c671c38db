import { knownSums } from '#shared-calc/bench/order-sums.ts';
import { isTaxMissing, partData, type QuotePart } from '#shared-calc/papers/quote-part.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import type { WorkedOrder } from './work-order.ts';

interface SumTexts extends Partial<QuotePart> {
  readonly cost: string;
  readonly net: string;
  /** None while a tax is not given. */
  readonly tax: string | null;
  readonly gross: string;
  readonly deposit: string;
  readonly hours: number;
}

/** What is known of the sums of a size; `fault` where none can be worked. */
export interface ColumnSums {
  readonly sums: SumTexts | null;
  readonly fault?: string;
}

/** Cost and price of a size as if it were the whole job, with all its builds; or why they are not known yet. */
export function columnSums(
  { bench, pricing, workshop }: Pick<WorkedOrder, 'bench' | 'pricing' | 'workshop'>,
  column: string,
): ColumnSums {
  const known = knownSums(bench, [column], pricing);
  if (!known.ok) return { sums: null, fault: sayOrderFault(known.fault) };
  const { costCoins, netCoins, grossCoins, depositCoins, hours } = known.value.quote;
  const money = (coins: number) => coinsText(coins, workshop.coinDecimals);
  return {
    sums: {
      cost: money(costCoins),
      net: money(netCoins),
      tax: isTaxMissing(known.value) ? null : money(grossCoins - netCoins),
      gross: money(grossCoins),
      deposit: money(depositCoins),
      hours,
      ...partData(known.value),
    },
  };
}

export function partOf({ missing = [], guesses = [] }: SumTexts): QuotePart {
  return { missing, guesses };
}

/** Only a measure keeps hours from being whole. */
export function areHoursKnown({ missing = [] }: SumTexts): boolean {
  return missing.every(({ what }) => what !== 'measure');
}
