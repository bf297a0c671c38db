import { cleanNoise, roundHalfAway } from '#shared-calc/quantity/write-figure.ts';
import { refused } from './trade-function.ts';

type Refusal = ReturnType<typeof refused>;

/** Refuses the first of the named figures that is below zero: "Depth cannot be below zero." */
export function belowZero(figures: Readonly<Record<string, number>>): Refusal | undefined {
  const name = Object.keys(figures).find((each) => (figures[each] ?? 0) < 0);
  return name === undefined ? undefined : refused(`${name} cannot be below zero.`);
}

/** Refuses the first of the named figures that is zero or less: "Pack must be more than zero." */
export function notAboveZero(figures: Readonly<Record<string, number>>): Refusal | undefined {
  const name = Object.keys(figures).find((each) => (figures[each] ?? 0) <= 0);
  return name === undefined ? undefined : refused(`${name} must be more than zero.`);
}

/** The sentence for a share of 1 or more, for example if 12 was typed for 12 %: "Settling is a share; 12 % is 0.12." */
export function sayShare(name: string, figure: number): string {
  return `${name} is a share; ${cleanNoise(figure)} % is ${cleanNoise(figure / 100)}.`;
}

/** Refuses a share below zero, or of 1 or more. */
export function notBelowOne(name: string, figure: number): Refusal | undefined {
  return figure >= 1 ? refused(sayShare(name, figure)) : belowZero({ [name]: figure });
}

/** Millimetres in a sentence, with at most one decimal: "62.5 mm". */
export function sayMm(figure: number): string {
  return `${roundHalfAway(figure, 1)} mm`;
}
