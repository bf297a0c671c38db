import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { notCoins } from '#shared-calc/trade/price/refuse-coins.ts';
import { shareCoins } from '#shared-calc/trade/price/share-coins.ts';
import { listFunction } from '#shared-calc/trade/trade-function.ts';

export interface LandedGoods {
  /** Cost of each line, in coins. */
  readonly lines: readonly number[];
  readonly carriage: number;
  /** Carriage is free from this sum of goods on; left out: never. */
  readonly freeFrom?: number;
}

export interface LandedCost {
  /** In coins; 0 if carriage is free, or if there are no goods. */
  readonly carriage: number;
  /** Each line with its part of the carriage; they add up to goods plus carriage. */
  readonly landed: readonly number[];
}

/** Carriage shared over the lines by value, in whole coins, the largest remainders first. */
export function landedCost({ lines, carriage, freeFrom }: LandedGoods): LandedCost | Refusal {
  const wrong =
    notCoins({ Carriage: carriage, 'Free carriage': freeFrom ?? 0 }) ??
    lines.map((line) => notCoins({ 'The cost of a line': line })).find((refusal) => refusal !== undefined);
  if (wrong) return wrong;
  const goods = lines.reduce((sum, line) => sum + line, 0);
  const isFree = lines.length === 0 || (freeFrom !== undefined && goods >= freeFrom);
  const charged = isFree ? 0 : carriage;
  const parts = shareCoins(charged, lines);
  return { carriage: charged, landed: lines.map((line, at) => line + (parts[at] ?? 0)) };
}

export const landedCostEntry = listFunction({
  name: 'LANDED_COST',
  title: 'Landed cost',
  group: 'buying',
  takes: 'cost of each line, carriage, goods from which it is free',
  gives: 'each line with its part of the carriage',
  sum: 'line + carriage x line / all lines, in whole coins that add up',
  help: 'What goods cost once they are here.',
  examples: [
    { rule: '40.00 and 20.00, carriage 7.50, free from 90.00', gives: '45.00 and 22.50' },
    { rule: '60.00 and 30.00, carriage 7.50, free from 90.00', gives: '60.00 and 30.00' },
  ],
  source: 'common practice, no source',
});
