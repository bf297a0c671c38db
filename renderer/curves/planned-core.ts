import { comeUpMinutes, type ComeUp } from '#shared-calc/trade/come-up-time.ts';
import type { TreatmentPlan } from '#shared-calc/trade/leaf-treat-time.ts';
import type { TreatmentWay } from '#shared-calc/trade/leaf-treatment.ts';
import { CORE_BELOW_STEAM_K } from '#shared-calc/trade/steam-hold.ts';
import type { CurvePoint } from './curve-spec.ts';

/** How the core of leaves follows its medium: as the treatment times are worked. A test holds the two together. */
const slow = { steam: 12, bake: 25 } as const;
const LAG = 1.4;
const START_C = 20;
const BAKED_C = 90;

/** The core of one batch as planned: nothing for boiling, where the pot is timed and not the core. */
export interface PlannedCore {
  /** Minutes from the start of the batch until the medium is there. */
  readonly from: number;
  /** Minutes more until the core is. */
  readonly comeUp: number;
  readonly target: number;
  /** To the end of the hold. */
  readonly points: readonly CurvePoint[];
}

export function plannedCore(way: TreatmentWay, plan: TreatmentPlan): PlannedCore | undefined {
  if (way === 'boil') return undefined;
  const target = way === 'steam' ? plan.temperature - CORE_BELOW_STEAM_K : BAKED_C;
  const heating: ComeUp = { tenfold: slow[way], lag: LAG, heat: plan.temperature, start: START_C, target };
  const comeUp = comeUpMinutes(heating);
  if (typeof comeUp !== 'number') return undefined;
  const from = minutesBefore(plan, 'come up');
  const end = minutesBefore(plan, 'hold') + plan.hold;
  const points = Array.from({ length: Math.round(end - from) + 1 }, (_, minute): CurvePoint => [
    from + minute,
    coreAt(minute, heating),
  ]);
  return { from, comeUp, target, points: from > 0 ? [[0, START_C], ...points] : points };
}

function minutesBefore({ steps }: TreatmentPlan, name: string): number {
  const at = steps.findIndex((step) => step.name === name);
  return steps.slice(0, at).reduce((sum, { minutes }) => sum + minutes, 0);
}

/** The gap to the heat falls to a tenth every so many minutes; at first the core lags and stays as it was. */
function coreAt(minute: number, { tenfold, lag, heat, start }: ComeUp): number {
  return Math.max(start, heat - lag * (heat - start) * 10 ** (-minute / tenfold));
}
