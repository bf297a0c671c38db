import { jobsInOrder } from './money-hands.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { isBefore, isGateOpen } from '#shared-calc/jobs/move-job.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import type { JobPlan } from './job-plan.ts';
import type { PlanBook } from './plan-book.ts';

/** Jobs that are being prepared or built: paid, and not handed over yet. */
export function isUnderWay(job: Job): boolean {
  return isGateOpen(job) && isBefore(job.state, 'handed over');
}

/** Jobs whose tank stands with the client. */
export function isHandedOver(job: Job): boolean {
  return job.state === 'handed over' || job.state === 'in service';
}

export interface PlannedJobs {
  readonly planned: readonly JobPlan[];
  /** Why the others have no dates. */
  readonly without: readonly { readonly job: Job; readonly says: string }[];
}

/** The dates of all jobs that pass, in order of their numbers. */
export function plannedJobs(
  records: Records,
  passes: (job: Job) => boolean,
  { plans, today }: { readonly plans: PlanBook; readonly today: Day },
): PlannedJobs {
  const planned: JobPlan[] = [];
  const without: PlannedJobs['without'][number][] = [];
  for (const job of jobsInOrder(records).filter(passes)) {
    const plan = plans(records, job, today);
    if (plan.ok) planned.push(plan.value);
    else without.push({ job, says: plan.fault });
  }
  return { planned, without };
}
