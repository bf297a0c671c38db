import { firstRefusal, type Refusal } from '#shared-calc/trade/first-refusal.ts';
import { belowZero } from '#shared-calc/trade/refuse-figure.ts';

/** Refuses the first of the named amounts that is below zero or not whole coins. */
export function notCoins(amounts: Readonly<Record<string, number>>): Refusal | undefined {
  const broken = Object.entries(amounts).find(([, coins]) => !Number.isSafeInteger(coins));
  return belowZero(amounts) ?? firstRefusal([[broken !== undefined, `${broken?.[0]} must be in whole coins.`]]);
}
