import { figureCautions, type StepCaution } from '#shared-calc/prepare/cautions.ts';
import type { Caution } from '#shared-calc/trade/caution.ts';
import type { TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import type { TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';
import { cautionsOf } from '#shared-calc/prepare/step-cautions.ts';

/** One way of treating leaves, to keep at hand during the treatment. */
export interface TreatmentCard {
  readonly way: TreatmentWay;
  /** Minutes from the start of a batch to the end of each part, in order. */
  readonly steps: readonly { readonly name: string; readonly minutes: number; readonly over: number }[];
  readonly batches: number;
  /** What may go wrong with these figures. */
  readonly warnings: readonly Caution[];
  readonly cautions: readonly StepCaution[];
  /** What the figures of this way leave out. */
  readonly beside: readonly string[];
}

export function treatmentCard(way: TreatmentWay, plan: TreatmentPlan): TreatmentCard {
  let over = 0;
  const steps = plan.steps.map(({ name, minutes }) => {
    over += minutes;
    return { name, minutes, over };
  });
  const own = plan.cautions.map(({ says, decides }) => ({ step: way, caution: says, decides }));
  const general = cautionsOf(['leaves and wood', ...(way === 'steam' ? ['steam'] : []), 'sterile or clean']);
  return {
    way,
    steps,
    batches: plan.batches,
    warnings: plan.warnings,
    cautions: [
      ...general,
      ...own.filter(({ caution }) => !general.some((each) => each.caution.includes(caution.replace(/\.$/, '')))),
    ],
    beside:
      way === 'steam' ? figureCautions.filter(({ uses }) => uses.includes('leavesLoose')).map(({ says }) => says) : [],
  };
}
