import type { ComeUp } from './come-up-time.ts';

/** degC of the leaves at the start. */
const LEAVES_START_C = 20;
const LAG = 1.4;
/** Minutes for a ten-fold approach: a bag in steam, a deep dry tray in the oven; from memory, measure with a probe. */
const TENFOLD = { steam: 12, bake: 25 } as const;

/** How the core of leaves follows its steam or oven up to the target, degC. Boiling is timed by the pot. */
export function leafHeating(way: 'steam' | 'bake', heat: number, target: number): ComeUp {
  return { tenfold: TENFOLD[way], lag: LAG, heat, start: LEAVES_START_C, target };
}

/** degC of the core this many minutes after its medium is hot; during the lag it stays at its start. */
export function coreAfter(minutes: number, { tenfold, lag, heat, start }: ComeUp): number {
  return Math.max(start, heat - lag * (heat - start) * 10 ** (-minutes / tenfold));
}
