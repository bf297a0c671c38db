import { comeUpMinutes } from '#shared-calc/trade/heat/come-up-time.ts';
import { coreAfter, leafHeating, LEAVES_START_C } from '#shared-calc/trade/heat/leaf-heating.ts';
import type { TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
import type { TreatmentWay } from '#shared-calc/trade/heat/leaf-treatment.ts';
import type { CurvePoint } from './curve-spec.ts';

/** The planned core temperature of one batch; nothing for boiling, which times the pot and not the core. */
export interface PlannedCore {
  /** Minutes from the start of the batch until the medium is at temperature. */
  readonly from: number;
  /** Further minutes until the core is. */
  readonly comeUp: number;
  readonly target: number;
  /** Up to the end of the hold. */
  readonly points: readonly CurvePoint[];
}

export function plannedCore(way: TreatmentWay, plan: TreatmentPlan): PlannedCore | undefined {
  if (way === 'boil') return undefined;
  const heating = leafHeating(way, plan.temperature);
  const comeUp = comeUpMinutes(heating);
  if (typeof comeUp !== 'number') return undefined;
  const from = minutesBefore(plan, 'come up');
  const end = minutesBefore(plan, 'hold') + plan.hold;
  const points = Array.from({ length: Math.round(end - from) + 1 }, (_, minute): CurvePoint => [
    from + minute,
    coreAfter(minute, heating),
  ]);
  return { from, comeUp, target: heating.target, points: from > 0 ? [[0, LEAVES_START_C], ...points] : points };
}

function minutesBefore({ steps }: TreatmentPlan, name: string): number {
  const at = steps.findIndex((step) => step.name === name);
  return steps.slice(0, at).reduce((sum, { minutes }) => sum + minutes, 0);
}
