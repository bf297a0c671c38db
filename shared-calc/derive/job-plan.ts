import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { planFacts, type PlanFacts } from '#shared-calc/prepare/plan-facts.ts';
import type { PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import { prepPlan, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';

/** The dates of a job, and what they are worked from. */
export interface JobPlan {
  readonly facts: PlanFacts;
  readonly plan: PrepPlan;
}

interface PlannedJob {
  readonly job: Job;
  readonly bench: Bench;
  readonly keys: readonly string[];
}

interface PlanTerms {
  readonly records: Pick<Records, 'material' | 'supplier' | 'cultureKind'>;
  readonly today: Day;
  readonly calendar: WorkCalendar;
}

/** A job's dates from its handover and its deposit. */
export function jobPlan(
  { job, bench, keys }: PlannedJob,
  { records, today, calendar }: PlanTerms,
): Result<JobPlan, PlanFault> {
  const facts = planFacts(bench, keys, records);
  if (!facts.ok) return facts;
  const plan = prepPlan(facts.value, {
    on: today,
    calendar,
    ...(job.handover !== undefined && { handover: job.handover }),
    ...(job.depositOn !== undefined && { deposit: job.depositOn }),
  });
  return plan.ok ? ok({ facts: facts.value, plan: plan.value }) : plan;
}
