import type { SaidCaution } from '#shared-calc/cautions/all-cautions.ts';
import type { Warning } from '#shared-calc/cautions/warning.ts';
import type { ComeUp } from './come-up-time.ts';
import { countUp } from '#shared-calc/trade/count-up.ts';
import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { leafBatchCount } from './leaf-batches.ts';
import { treatmentCautions } from './treatment-cautions.ts';
import { treatmentSteps, type TreatmentStep } from './treatment-steps.ts';
import { treatmentWarnings } from './treatment-warnings.ts';
import { loadOf, type LeafTreatment } from './leaf-treatment.ts';
import { heatTarget } from '#shared-calc/trade/heat-targets.ts';
import { listFunction, refused } from '#shared-calc/trade/trade-function.ts';

/** Whole attended minutes of a batch. */
const ATTENDED_MIN = 14;

export interface TreatmentPlan {
  readonly batches: number;
  /** The parts of one batch in order; each rounded up to the whole minute. */
  readonly steps: readonly TreatmentStep[];
  /** Minutes until the hold begins to count: of the core in steam and oven, of the pot in boiling. */
  readonly comeUp: number;
  readonly hold: number;
  readonly batchMinutes: number;
  /** By the clock, all batches one after the other. */
  readonly minutes: number;
  readonly attended: number;
  /** degC of the steam, the water or the oven. */
  readonly temperature: number;
  /** The source schedule of the hold. */
  readonly reference: string;
  /** How the core follows its steam or oven; a pot is timed from when it boils. */
  readonly core?: ComeUp;
  /** What may go wrong with these figures: the vessel boils dry, the leaves stay wet. */
  readonly warnings: readonly Warning[];
  readonly cautions: readonly SaidCaution[];
}

/**
 * The treatment of the leaves: batches, minutes of each part, by the clock and attended. Sterile works with steam only;
 * it is refused where the core stays below 115 degC. An oven over 120 degC, a pot that boils below 90 degC, and no
 * leaves at all are refused.
 */
export function leafTreatTime(treatment: LeafTreatment): TreatmentPlan | Refusal {
  if (!heatTarget(treatment)) return refused(onlySteam(treatment.way));
  const { vesselL, fill } = loadOf(treatment);
  const batches = leafBatchCount(treatment.leavesL, vesselL, fill);
  if (typeof batches !== 'number') return batches;
  if (batches === 0) return refused('There is nothing to treat.');
  const batchL = treatment.leavesL / batches;
  const schedule = treatmentSteps(treatment, batchL);
  if ('refused' in schedule) return schedule;
  const steps = schedule.steps.map((step) => ({ ...step, minutes: countUp(step.minutes) }));
  const batchMinutes = steps.reduce((sum, step) => sum + step.minutes, 0);
  return {
    batches,
    steps,
    comeUp: minutesOf(steps, 'come up'),
    hold: minutesOf(steps, 'hold'),
    batchMinutes,
    minutes: batches * batchMinutes,
    attended: batches * ATTENDED_MIN,
    temperature: schedule.temperature,
    reference: schedule.reference,
    ...(schedule.core && { core: schedule.core }),
    warnings: treatmentWarnings(treatment, batchL, steps),
    cautions: treatmentCautions(treatment),
  };
}

function minutesOf(steps: readonly TreatmentStep[], name: TreatmentStep['name']): number {
  return steps.find((step) => step.name === name)?.minutes ?? 0;
}

function onlySteam(way: LeafTreatment['way']): string {
  return `${way === 'boil' ? 'Boiling' : 'Baking'} cleans and does not sterilise; only pressure steam does.`;
}

export const leafTreatTimeEntry = listFunction({
  name: 'LEAF_TREAT_TIME',
  title: 'Leaf treatment',
  group: 'heat',
  takes: 'way (steam, boil or bake), aim (clean or sterile), litres of leaves, vessel, fill, altitude, gauge or oven',
  gives: 'batches, come-up, hold, minutes a batch, minutes by the clock, minutes attended, temperature',
  sum: 'batches x the parts of one batch, each up to the whole minute; 14 attended minutes a batch',
  help: 'Steam: heat 15, vent 10, come-up, hold (30 for clean), release 25. Boil: heat 20, hold 15, drain 15. Bake: come-up, hold 30, cool 15. A hold begins when the core is there, never when the vessel is.',
  examples: [
    {
      rule: 'steam, sterile, 43.51 L, vessel 21 L, fill 0.6, 650 m, 15 psi',
      gives: '4 batches of 127 min, come-up 26, hold 51: 508 min, 56 attended, at 119.76 degC',
    },
    {
      rule: 'bake, clean, 43.51 L, oven 60 L, fill 0.5, 105 degC',
      gives: '2 batches of 68 min, come-up 23, hold 30: 136 min, 28 attended',
    },
  ],
  source:
    'CDC Guideline for Disinfection and Sterilization in Healthcare Facilities 2008; baking and boiling are common practice, no source',
  cautions: ['cleanIsEnough', 'neverPromise', 'treatingHeat'],
});
