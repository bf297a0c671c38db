import type { Workshop } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { leafTreatTime, type TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import {
  suggestWay,
  treatmentWays,
  type LeafTreatment,
  type TreatmentAim,
  type TreatmentWay,
} from '#shared-calc/trade/heat/leaf-treatment.ts';

/** Leaves to treat and how; vessel and filling default to the usual ones of the way. */
export type LeavesToTreat = Omit<LeafTreatment, 'gaugeKpa' | keyof TreatmentPlace>;

/** Where it is done: the height above the sea, the steam vessel and the oven. */
export type TreatmentPlace = Pick<
  Workshop,
  'altitudeM' | 'pressureKpa' | 'steamWaterL' | 'steamPowerKw' | 'ovenPowerW'
>;

/** A treatment in this workshop, or the sentence that says why it does not work. */
export function treatLeaves(leaves: LeavesToTreat, place: TreatmentPlace): Result<TreatmentPlan, string> {
  const fault = placeFault(leaves.way, place);
  if (fault !== undefined) return failed(fault);
  // A way that needs them has them; no other way reads them.
  const { altitudeM = 0, pressureKpa: gaugeKpa = 0, steamWaterL, steamPowerKw, ovenPowerW } = place;
  const plan = leafTreatTime({
    ...leaves,
    altitudeM,
    gaugeKpa,
    ...(steamWaterL !== undefined && { steamWaterL }),
    ...(steamPowerKw !== undefined && { steamPowerKw }),
    ...(ovenPowerW !== undefined && { ovenPowerW }),
  });
  return 'refused' in plan ? failed(plan.refused) : ok(plan);
}

function placeFault(way: TreatmentWay, { altitudeM, pressureKpa }: TreatmentPlace): string | undefined {
  if (altitudeM === undefined && (way === 'steam' || way === 'boil'))
    return 'The altitude of the workshop is not given yet: steam and boiling water are cooler higher up.';
  if (pressureKpa === undefined) return way === 'steam' ? 'The pressure of the vessel is not given yet.' : undefined;
  return pressureKpa < 0 ? 'The gauge cannot be below zero: there is no steam under pressure.' : undefined;
}

export interface TriedWay {
  readonly way: TreatmentWay;
  readonly plan: Result<TreatmentPlan, string>;
  readonly suggested: boolean;
}

/** All ways side by side, each in its usual vessel, and the suggested one marked. `moistened`: 16 h before. */
export function waysSideBySide(
  leaves: Pick<LeavesToTreat, 'aim' | 'leavesL' | 'ovenC' | 'open'> & { readonly moistened: boolean },
  place: TreatmentPlace,
): readonly TriedWay[] {
  return triedWays((way) => treatLeaves({ way, ...leaves }, place), leaves);
}

/**
 * Each way tried, and the suggested one marked: the usual one for the aim; if it does not work here, such as boiling at
 * a great height, the oven, whose 90 degC at the core is enough for dry leaves too, otherwise steam.
 */
export function triedWays(
  planOf: (way: TreatmentWay) => TriedWay['plan'],
  { aim, moistened }: { readonly aim: TreatmentAim; readonly moistened: boolean },
): readonly TriedWay[] {
  const plans = new Map(treatmentWays.map((way) => [way, planOf(way)]));
  const liked = [suggestWay(aim, moistened), 'bake', 'steam'] as const;
  const suggested = liked.find((way) => plans.get(way)?.ok);
  return [...plans].map(([way, plan]) => ({ way, plan, suggested: way === suggested }));
}
