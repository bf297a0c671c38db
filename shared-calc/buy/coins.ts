import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';

/** Money in the currency to whole coins: 12.345 with two decimals is 1235. */
export function toCoins(money: number, decimals: number): number {
  return roundCoins(money * 10 ** decimals);
}

/** Reads a plain decimal text as whole coins; `undefined` if it is not money or has more decimals than the currency. */
export function readCoins(text: string, decimals: number): number | undefined {
  const parts = /^(-?)(\d{1,12})(?:\.(\d+))?$/.exec(text.trim());
  const part = parts?.[3] ?? '';
  if (!parts || part.length > decimals) return undefined;
  const coins = Number(`${parts[2]}${part.padEnd(decimals, '0')}`);
  return parts[1] === '-' ? 0 - coins : coins;
}
