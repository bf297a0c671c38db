import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { lampDue } from '#shared-calc/prepare/care-calendar.ts';
import { planFacts, type PlanFacts, type PlanTerms } from '#shared-calc/prepare/plan-facts.ts';
import type { PlanStore } from '#shared-calc/prepare/planned-goods.ts';
import type { PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import { prepPlan, type PlanWish, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { sizeCare, type SizeCare } from '#shared-calc/prepare/size-care.ts';
import { sizeFigures } from '#shared-calc/prepare/size-figures.ts';
import { stepMinutes, type TimedStep } from '#shared-calc/prepare/step-minutes.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { withJobFacts } from './job-facts.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** The dates of an order, and what its bench gives for them. */
export interface OrderDates {
  readonly facts: PlanFacts;
  readonly plan: PrepPlan;
  /** Attended minutes by the step on whose day they fall; none while a work line has no figure. */
  readonly minutes: ReadonlyMap<TimedStep, number>;
  /** What is repeated after the handover. */
  readonly care: readonly SizeCare[];
  /** From when to when the lamps are due; none if the build has no lamps. */
  readonly lamps: { readonly from: Day; readonly to: Day } | undefined;
  readonly tanks: number;
}

export interface JobPlan extends OrderDates {
  readonly job: Job;
}

interface DatedOrder {
  readonly bench: Bench;
  readonly keys: readonly string[];
}

interface DateTerms {
  readonly records: PlanTerms['records'] & Pick<Records, 'done'>;
  readonly store: PlanStore;
  readonly display: Display;
  readonly wish: PlanWish;
}

/** Works out the dates of some columns of a bench, of a job with what has happened of it. */
export function orderDates(
  { bench, keys, job }: DatedOrder & { readonly job?: Job | undefined },
  { records, display, wish, store }: DateTerms,
): Result<OrderDates, PlanFault> {
  const facts = orderFacts({ bench, keys, job }, { records, wish, store });
  if (!facts.ok) return facts;
  const plan = prepPlan(facts.value, wish);
  if (!plan.ok) return plan;
  const minutes = stepMinutes(bench, keys);
  const isLit = keys.some((key) => (sizeFigures(bench, key, display).number('lamps', 'each') ?? 0) > 0);
  return ok({
    facts: facts.value,
    plan: plan.value,
    minutes: minutes.ok ? minutes.value : new Map(),
    care: sizeCare(bench, plan.value.handover, display),
    lamps: isLit ? lampDue(plan.value.handover, wish.calendar) : undefined,
    tanks: bench.input().columns.reduce((sum, { count }) => sum + count, 0),
  });
}

/** The input of a plan: of a job with what the book tells of its steps. */
export function orderFacts(
  { bench, keys, job }: DatedOrder & { readonly job?: Job | undefined },
  { records, wish, store }: Omit<DateTerms, 'display'>,
): Result<PlanFacts, PlanFault> {
  const facts = planFacts(bench, keys, { records, store, on: wish.on, ...(job && { job: job.id }) });
  return facts.ok && job ? ok(withJobFacts(facts.value, { job, records, wish })) : facts;
}

/** A job's dates, from its handover and its deposit. */
export function jobPlan(
  { job, ...order }: DatedOrder & { readonly job: Job },
  { wish, ...terms }: Omit<DateTerms, 'wish'> & { readonly wish: Omit<PlanWish, 'handover' | 'deposit'> },
): Result<JobPlan, PlanFault> {
  if (order.keys.length === 0) return failed({ kind: 'no-sizes', job: job.id });
  const { handover, depositOn: deposit } = job;
  const dates = orderDates(
    { ...order, job },
    {
      ...terms,
      wish: { ...wish, ...(handover !== undefined && { handover }), ...(deposit !== undefined && { deposit }) },
    },
  );
  return dates.ok ? ok({ job, ...dates.value }) : dates;
}
