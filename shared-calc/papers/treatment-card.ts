import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import type { TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';

/** One way of treating leaves, to keep at hand during the treatment. */
export interface TreatmentCard extends Pick<TreatmentPlan, 'warnings'> {
  readonly way: TreatmentWay;
  /** Minutes from the start of a batch to the end of each part, in order. */
  readonly steps: readonly { readonly name: string; readonly minutes: number; readonly over: number }[];
  readonly batches: number;
  /** Of the way chosen. */
  readonly cautions: readonly SaidCaution[];
}

export function treatmentCard(way: TreatmentWay, plan: TreatmentPlan): TreatmentCard {
  let over = 0;
  const steps = plan.steps.map(({ name, minutes }) => {
    over += minutes;
    return { name, minutes, over };
  });
  return { way, steps, batches: plan.batches, warnings: plan.warnings, cautions: plan.cautions };
}
