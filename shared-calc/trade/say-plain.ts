import { roundHalfAway } from '#shared-calc/quantity/write-figure.ts';

/** A figure as it stands in a sentence: so many decimals at most, half away from zero, no empty ones. */
export function sayPlain(figure: number, decimals = 2): string {
  return String(roundHalfAway(figure, decimals));
}
