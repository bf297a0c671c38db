import { failed, ok, type Result } from '#shared-calc/result.ts';

interface CoinOptions {
  readonly coinDecimals: number;
  readonly decimalComma?: boolean;
}

/** Reads an amount of money such as `1289.25` as whole coins; never rounds, never takes a fraction of a coin. */
export function readPriceCoins(
  text: string,
  { coinDecimals, decimalComma = false }: CoinOptions,
): Result<number, string> {
  const plain = decimalComma ? text.trim().replace(',', '.') : text.trim();
  const parts = /^(-?)(\d+)(?:\.(\d+))?$/.exec(plain);
  if (!parts) return failed(`"${text}" is not a price.`);
  if (parts[1] === '-') return failed(`The price ${text} is below zero.`);
  const decimals = parts[3] ?? '';
  if (decimals.replace(/0+$/, '').length > coinDecimals) return failed(`The price ${text} has a fraction of a coin.`);
  const coins = Number(`${parts[2]}${decimals.slice(0, coinDecimals).padEnd(coinDecimals, '0')}`);
  return Number.isSafeInteger(coins) ? ok(coins) : failed(`The price ${text} is too large.`);
}
