import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import type { Amount } from './csv-text.ts';

/** Coins as an exact decimal for a CSV cell. */
export function coinAmount(coins: number, decimals: number): Amount {
  return { amount: coinsText(coins, decimals) };
}
