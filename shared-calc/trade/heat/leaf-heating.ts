import type { ComeUp } from './come-up-time.ts';
import { CORE_BELOW_STEAM_K } from './steam-hold.ts';

/** degC of the leaves at the start. */
export const LEAVES_START_C = 20;
/** degC of the core from which a bake counts. */
const BAKED_CORE_C = 90;
const LAG = 1.4;
/** Minutes for a ten-fold approach: a bag in steam, a deep dry tray in the oven; from memory, measure with a probe. */
const TENFOLD = { steam: 12, bake: 25 } as const;

/** How the core of leaves follows its steam or oven, degC. Boiling is timed by the pot. */
export function leafHeating(way: 'steam' | 'bake', heat: number): ComeUp {
  const target = way === 'steam' ? heat - CORE_BELOW_STEAM_K : BAKED_CORE_C;
  return { tenfold: TENFOLD[way], lag: LAG, heat, start: LEAVES_START_C, target };
}

/** degC of the core this many minutes after its medium is hot; during the lag it stays at its start. */
export function coreAfter(minutes: number, { tenfold, lag, heat, start }: ComeUp): number {
  return Math.max(start, heat - lag * (heat - start) * 10 ** (-minutes / tenfold));
}
