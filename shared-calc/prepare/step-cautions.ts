import type { UseName } from '#shared-calc/fields/uses.ts';
import { stepCautions, type StepCaution } from './cautions.ts';
import { heatCaution, heatWords } from './heat-words.ts';
import type { SizeFigures } from './size-figures.ts';

/**
 * A caution of a step; `when` is a use without which there is no such act, `unless` a use that makes it unnecessary.
 */
export type CautionOf = string | { readonly step: string; readonly when?: UseName; readonly unless?: UseName };

/** The cautions of some steps, in the order given. Throws for an unknown step, which is a bug of the card. */
export function cautionsOf(steps: readonly string[]): readonly StepCaution[] {
  return steps.map((step) => {
    const found = stepCautions.find((each) => each.step === step);
    if (!found) throw new Error(`no caution of ${step}`);
    return found;
  });
}

/** The cautions that apply to this size; that of heat has its temperatures. */
export function cautionsFor(of: readonly CautionOf[], figures: SizeFigures): readonly StepCaution[] {
  return cautionsOf(
    of.filter((each) => applies(each, figures)).map((each) => (typeof each === 'string' ? each : each.step)),
  ).map((each) => (each.step === 'heat' ? { ...each, caution: heatCaution(heatWords(figures)) } : each));
}

function applies(of: CautionOf, { holds, surelyHolds }: SizeFigures): boolean {
  if (typeof of === 'string') return true;
  if (of.when !== undefined && !holds(of.when)) return false;
  return of.unless === undefined || !surelyHolds(of.unless);
}
