import { jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import { isBefore, isGateOpen } from '#shared-calc/jobs/move-job.ts';
import type { PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { Derived, DerivedJob } from './derived.ts';
import type { JobPlan } from './job-plan.ts';

/** Jobs in preparation or in build: paid, and not handed over yet. */
export function isUnderWay(job: Job): boolean {
  return isGateOpen(job) && isBefore(job.state, 'handed over');
}

/** Jobs whose tank is at the client's. */
export function isHandedOver(job: Job): boolean {
  return job.state === 'handed over' || job.state === 'in service';
}

export interface PlannedJobs {
  readonly planned: readonly JobPlan[];
  /** Why the others have no dates. */
  readonly without: readonly { readonly job: DerivedJob; readonly fault: PlanFault }[];
}

/** The dates of all jobs that pass, in order of their numbers. */
export function plannedJobs(derived: Derived, passes: (job: Job) => boolean): PlannedJobs {
  const planned: JobPlan[] = [];
  const without: PlannedJobs['without'][number][] = [];
  for (const { id } of jobsInOrder(derived.records).filter(passes)) {
    const job = derived.job(id);
    const plan = job?.plan();
    if (plan?.ok) planned.push(plan.value);
    else if (job && plan) without.push({ job, fault: plan.fault });
  }
  return { planned, without };
}
