import { writeNumber } from './write-figure.ts';

/** How a currency is written. */
export interface CoinWriting {
  readonly coinDecimals: number;
  readonly decimalComma: boolean;
}

/** Whole coins as a plain decimal text: -5 with two decimals is `-0.05`. */
export function coinsText(coins: number, decimals: number): string {
  const digits = String(Math.abs(coins)).padStart(decimals + 1, '0');
  const at = digits.length - decimals;
  const sign = coins < 0 ? '-' : '';
  return decimals === 0 ? sign + digits : `${sign}${digits.slice(0, at)}.${digits.slice(at)}`;
}

/** Coins as shown, with thousands separators: `1,288.88`. */
export function showCoins(coins: number | undefined, { coinDecimals, decimalComma }: CoinWriting): string {
  return coins === undefined ? '' : writeNumber(coins / 10 ** coinDecimals, coinDecimals, { decimalComma });
}

/** Coins as a person would type them: `1288.88`. */
export function entryOfCoins(coins: number | undefined, { coinDecimals, decimalComma }: CoinWriting): string {
  if (coins === undefined) return '';
  const text = coinsText(coins, coinDecimals);
  return decimalComma ? text.replace('.', ',') : text;
}
