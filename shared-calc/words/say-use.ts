import type { UseFault } from '#shared-calc/acts/move-use.ts';
import { nounOf, useOf, type UseName } from '#shared-calc/fields/uses.ts';

export function sayUseFault({ use, line, wanted, given }: UseFault): string {
  return `The program reads ${nounOf(use)} as a ${wanted}, and ${line} is a ${given}.`;
}

/** What stops if no line of a recipe has the use any more. */
export function sayWithoutUse(use: UseName): string {
  const { optional, what } = useOf(use);
  const reads = `The program reads it: ${what.charAt(0).toLowerCase()}${what.slice(1)}.`;
  return optional
    ? `${reads} Without it dates, drawings and cards take it that the tank has none.`
    : `${reads} Without it dates, drawings and cards say that no ${nounOf(use)} is given in this recipe.`;
}
