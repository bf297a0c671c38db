import { capital } from '#shared-calc/rule/capital.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { inSentence } from '#shared-calc/recipe/line-label.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import type { Mend } from './mends.ts';

/**
 * "Take the screen from under the lamps: saves 49.00 cr of cost, 70.00 of price." Also states it if that is not enough.
 */
export function sayMend(mend: Mend, { coinDecimals, currency }: Pick<Workshop, 'coinDecimals' | 'currency'>): string {
  const act = capital(mend.says);
  const ends = [
    ...(mend.gives === undefined ? [] : [mend.gives]),
    ...(mend.state === 'holds' ? [] : [mend.state === 'may not hold' ? 'better, not sure' : 'helps, but not enough']),
    ...priceOf(mend, (coins) => coinsText(coins, coinDecimals), currency),
    ...(mend.breaks.length > 0
      ? [`then ${mend.breaks.map(inSentence).join(', ')} no longer ${mend.breaks.length === 1 ? 'holds' : 'hold'}`]
      : []),
  ];
  return ends.length > 0 ? `${act}: ${ends.join('; ')}.` : `${act}.`;
}

function priceOf(
  { savesCostCoins: cost, savesPriceCoins: price }: Mend,
  money: (coins: number) => string,
  currency: string,
) {
  if (cost === undefined || price === undefined || (cost === 0 && price === 0)) return [];
  const saves = cost > 0 || (cost === 0 && price > 0);
  const [first, second] = saves ? [cost, price] : [-cost, -price];
  return [`${saves ? 'saves' : 'costs'} ${money(first)} ${currency} of cost, ${money(second)} of price`];
}
