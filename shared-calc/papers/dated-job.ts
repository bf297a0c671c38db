import type { Day } from '#shared-calc/calendar/day.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { lampDue } from '#shared-calc/prepare/care-calendar.ts';
import { planFacts } from '#shared-calc/prepare/plan-facts.ts';
import { prepPlan, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sizeCare, type SizeCare } from './care-card.ts';
import { displayFor, type PaperFault, type PaperInput } from './paper-input.ts';
import { sizeFigures } from './size-figures.ts';

/** The dates of an order, and what comes again after its handover. */
export interface DatedJob {
  readonly plan: PrepPlan;
  readonly care: readonly SizeCare[];
  /** From when to when the lamps are due; none where the build has no lamps. */
  readonly lamps: { readonly from: Day; readonly to: Day } | undefined;
  readonly settleInDays: number;
}

export function datedJob(input: PaperInput): Result<DatedJob, PaperFault> {
  const { bench, sheet, records, wish } = input;
  const facts = planFacts(bench, keysOf(sheet), records);
  if (!facts.ok) return failed({ kind: 'plan', fault: facts.fault });
  const plan = prepPlan(facts.value, wish);
  if (!plan.ok) return failed({ kind: 'plan', fault: plan.fault });
  const display = displayFor(input);
  const { handover } = plan.value;
  const lit = keysOf(sheet).some((key) => (sizeFigures(bench, key, display).number('lamps', 'each') ?? 0) > 0);
  return ok({
    plan: plan.value,
    care: sizeCare(bench, handover, display),
    lamps: lit ? lampDue(handover, calendarOf(records)) : undefined,
    settleInDays: facts.value.settleIn,
  });
}
