import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { lampDue } from '#shared-calc/prepare/care-calendar.ts';
import { planFacts } from '#shared-calc/prepare/plan-facts.ts';
import { sayPlanFault, type PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import { prepPlan, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { stepMinutes, type TimedStep } from '#shared-calc/prepare/step-minutes.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import { sizeCare, type SizeCare } from '#shared-calc/papers/care-card.ts';
import { sizeFigures } from '#shared-calc/papers/size-figures.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

/** The dates of a job and what is reckoned from its bench for them. */
export interface JobPlan {
  readonly job: Job;
  readonly plan: PrepPlan;
  /** Attended minutes by the step on whose day they fall; none while a work line has no figure. */
  readonly minutes: ReadonlyMap<TimedStep, number>;
  readonly care: readonly SizeCare[];
  /** From when to when the lamps are due; none where the build has no lamps. */
  readonly lamps: { readonly from: Day; readonly to: Day } | undefined;
  readonly settleInDays: number;
  /** Tanks that the job builds. */
  readonly tanks: number;
}

/** A job's dates from its handover and its deposit; the sentence that says why there are none. */
export function jobPlan(records: Records, job: Job, today: Day): Result<JobPlan, string> {
  const { sheet, bench } = openJob(records, job, today);
  const keys = keysOf(sheet);
  const planned =
    keys.length === 0
      ? failed(`${job.id} has no size yet: take one first.`)
      : planOn(bench, { keys, records, job, today });
  return planned;
}

interface PlannedOn {
  readonly keys: readonly string[];
  readonly records: Records;
  readonly job: Job;
  readonly today: Day;
}

function planOn(bench: Bench, { keys, records, job, today }: PlannedOn): Result<JobPlan, string> {
  const calendar = calendarOf(records);
  const facts = planFacts(bench, keys, records);
  if (!facts.ok) return failed(sayFault(facts.fault, bench));
  const plan = prepPlan(facts.value, {
    on: today,
    calendar,
    ...(job.handover !== undefined && { handover: job.handover }),
    ...(job.depositOn !== undefined && { deposit: job.depositOn }),
  });
  if (!plan.ok) return failed(sayFault(plan.fault, bench));
  const minutes = stepMinutes(bench, keys);
  const display = displayOf(workshopOf(records));
  const lit = keys.some((key) => (sizeFigures(bench, key, display).number('lamps', 'each') ?? 0) > 0);
  return ok({
    job,
    plan: plan.value,
    minutes: minutes.ok ? minutes.value : new Map(),
    care: sizeCare(bench, plan.value.handover, display),
    lamps: lit ? lampDue(plan.value.handover, calendar) : undefined,
    settleInDays: facts.value.settleIn,
    tanks: bench.input().columns.reduce((sum, { count }) => sum + count, 0),
  });
}

function sayFault(fault: PlanFault, bench: Bench): string {
  return fault.kind === 'no-amount-yet' ? sayOrderFault(fault, calledByLines(bench.input())) : sayPlanFault(fault);
}
