import { comeUpMinutes } from '#shared-calc/trade/heat/come-up-time.ts';
import { coreAfter } from '#shared-calc/trade/heat/leaf-heating.ts';
import type { TreatmentPlan } from '#shared-calc/trade/heat/leaf-treat-time.ts';
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

export function plannedCore(plan: TreatmentPlan): PlannedCore | undefined {
  const { core, hold } = plan;
  if (!core) return undefined;
  const comeUp = comeUpMinutes(core);
  if (typeof comeUp !== 'number') return undefined;
  const from = minutesBefore(plan, 'come up');
  const end = minutesBefore(plan, 'hold') + hold;
  const points = Array.from({ length: Math.round(end - from) + 1 }, (_, minute): CurvePoint => [
    from + minute,
    coreAfter(minute, core),
  ]);
  return { from, comeUp, target: core.target, points: from > 0 ? [[0, core.start], ...points] : points };
}

function minutesBefore({ steps }: TreatmentPlan, name: string): number {
  const at = steps.findIndex((step) => step.name === name);
  return steps.slice(0, at).reduce((sum, { minutes }) => sum + minutes, 0);
}
