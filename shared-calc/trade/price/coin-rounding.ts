import { countUp } from '#shared-calc/trade/count-up.ts';

/** Rounds to the whole coin, half up, after removing binary noise of 1e-9: 100.49999999999999 is 100.5 and so 101. */
export function roundCoins(coins: number): number {
  return Math.floor(coins + 0.5 + 1e-9) + 0;
}

/** Rounds up to the next whole step of coins: 64,622 in steps of 500 is 65,000. A step of 0 changes nothing. */
export function coinsUpToStep(coins: number, step: number): number {
  return step > 0 ? countUp(coins / step) * step : coins;
}
