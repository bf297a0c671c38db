import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { leafTreatTime, type TreatmentPlan } from '#shared-calc/trade/leaf-treat-time.ts';
import { suggestWay, treatmentWays, type LeafTreatment, type TreatmentWay } from '#shared-calc/trade/leaf-treatment.ts';

/** Leaves to treat and how; the vessel and its filling are the usual ones of the way where they are left out. */
export type LeavesToTreat = Omit<LeafTreatment, 'altitudeM' | 'gaugeKpa'>;

/** Where it is done: the height above the sea, and what the steam vessel's gauge or weight says. */
export type TreatmentPlace = Pick<Workshop, 'altitudeM' | 'pressureKpa'>;

/** A treatment as it goes in this workshop, or the sentence that says why it does not. */
export function treatLeaves(leaves: LeavesToTreat, place: TreatmentPlace): Result<TreatmentPlan, string> {
  const plan = leafTreatTime({ ...leaves, altitudeM: place.altitudeM, gaugeKpa: place.pressureKpa });
  return 'refused' in plan ? failed(plan.refused) : ok(plan);
}

export interface TriedWay {
  readonly way: TreatmentWay;
  readonly plan: Result<TreatmentPlan, string>;
  readonly suggested: boolean;
}

/** All ways side by side, each in its usual vessel, and the one suggested marked. `moistened`: 16 h before. */
export function waysSideBySide(
  leaves: Pick<LeavesToTreat, 'aim' | 'leavesL'> & { readonly moistened: boolean },
  place: TreatmentPlace,
): readonly TriedWay[] {
  const { aim, leavesL, moistened } = leaves;
  const suggested = suggestWay(aim, moistened);
  return treatmentWays.map((way) => ({
    way,
    plan: treatLeaves({ way, aim, leavesL }, place),
    suggested: way === suggested,
  }));
}
