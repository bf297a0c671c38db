import { memo } from '#shared-calc/derive/memo.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { jobPlan, type JobPlan } from './job-plan.ts';

export type PlannedJobOrNot = Result<JobPlan, string>;

/** Plans of jobs, worked anew only when something they are worked from has changed. */
export type PlanBook = (records: Records, job: Job, today: Day) => PlannedJobOrNot;

export function openPlanBook(): PlanBook {
  const keeps = new Map<string, ReturnType<typeof memo<PlannedJobOrNot>>>();
  return (records, job, today) => {
    const keep = keeps.get(job.id) ?? memo<PlannedJobOrNot>();
    keeps.set(job.id, keep);
    return keep([job, today, ...tablesOf(records)], () => jobPlan(records, job, today));
  };
}

/** The tables that a plan reads; tubs, batches and what it took are none of them. */
function tablesOf(records: Records): readonly unknown[] {
  const { workshop, closedDay, line, size, localValue, tank, material, supplier, cultureKind } = records;
  return [workshop, closedDay, line, size, localValue, tank, material, supplier, cultureKind];
}
