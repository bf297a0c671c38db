import type { ComeUp } from './come-up-time.ts';
import { CORE_BELOW_STEAM_K } from './steam-hold.ts';

/** degC of the leaves at first. */
export const LEAVES_START_C = 20;
/** degC of the core at which a bake begins to count. */
const BAKED_CORE_C = 90;
const LAG = 1.4;
/** Minutes for a ten-fold approach: a bag in steam, a deep dry tray in the oven; from memory, measure with a probe. */
const TENFOLD = { steam: 12, bake: 25 } as const;

/** How the core of leaves follows its steam or oven, degC. A boiling pot is timed by the pot. */
export function leafHeating(way: 'steam' | 'bake', heat: number): ComeUp {
  const target = way === 'steam' ? heat - CORE_BELOW_STEAM_K : BAKED_CORE_C;
  return { tenfold: TENFOLD[way], lag: LAG, heat, start: LEAVES_START_C, target };
}

/** degC of the core so many minutes after its medium is there; at first it lags and stays as it was. */
export function coreAfter(minutes: number, { tenfold, lag, heat, start }: ComeUp): number {
  return Math.max(start, heat - lag * (heat - start) * 10 ** (-minutes / tenfold));
}
