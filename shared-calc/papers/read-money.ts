import { toCoins } from '#shared-calc/buy/coins.ts';
import { readFigure } from '#shared-calc/quantity/read-figure.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

type Money = Pick<Workshop, 'currency' | 'coinDecimals' | 'decimalComma'>;

/**
 * Reads an amount as a person writes it, `1,288.88` or `9.80 cr`, as whole coins. Never rounds: a fraction of a coin
 * is refused, and so is less than nothing.
 */
export function readMoney(text: string, { currency, coinDecimals, decimalComma }: Money): Result<number, string> {
  const bare = text.trim().endsWith(currency) ? text.trim().slice(0, -currency.length) : text;
  const read = readFigure(bare, { unit: 'money', decimalComma });
  if (!read.ok || read.value.unit.symbol !== 'money') return failed(`"${text.trim()}" is not an amount of money.`);
  const { value } = read.value;
  if (value < 0) return failed(`"${text.trim()}" is below zero.`);
  const coins = toCoins(value, coinDecimals);
  if (!Number.isSafeInteger(coins)) return failed(`"${text.trim()}" is too large.`);
  const isWhole = Math.abs(value * 10 ** coinDecimals - coins) < 1e-6;
  return isWhole ? ok(coins) : failed(`"${text.trim()}" has a fraction of a coin.`);
}
