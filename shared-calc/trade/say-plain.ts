import { roundHalfAway } from '#shared-calc/quantity/write-figure.ts';

/** A figure in a sentence: at most this many decimals, half away from zero, no trailing zeros. */
export function sayPlain(figure: number, decimals = 2): string {
  return String(roundHalfAway(figure, decimals));
}
