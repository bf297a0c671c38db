import type { Day } from '#shared-calc/calendar/day.ts';
import { stepOfGroup } from '#shared-calc/prepare/planned-goods.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';

export interface OrderDay {
  readonly day: Day;
  /** The job whose handover sets the day. */
  readonly job: string;
}

export interface PlannedJob {
  readonly job: string;
  readonly plan: Pick<PrepPlan, 'steps'>;
}

/** The last day to send a supplier's order: the earliest over all jobs and all quote groups that it brings goods of. */
export function orderBy(groups: readonly string[], planned: readonly PlannedJob[]): OrderDay | undefined {
  const steps = new Set<string | undefined>(groups.map((group) => stepOfGroup[group]));
  let first: OrderDay | undefined;
  for (const { job, plan } of planned) {
    for (const { step, orderBy: day } of plan.steps) {
      if (day === undefined || !steps.has(step)) continue;
      if (!first || day < first.day) first = { day, job };
    }
  }
  return first;
}
