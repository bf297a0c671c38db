import { byDay, type Day } from '#shared-calc/calendar/day.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { planFacts } from '#shared-calc/prepare/plan-facts.ts';
import { sayPlanFault } from '#shared-calc/words/say-plan-fault.ts';
import { prepPlan, type PlanWish, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { sayPlan } from '#shared-calc/prepare/say-plan.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { planCautions } from '#shared-calc/papers/prep-card.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';
import type { Command } from '#electron/cli/command.ts';
import { orderChecks, orderNotes } from '#electron/cli/order-checks.ts';
import { orderMisuse, orderOptions } from '#electron/cli/order-options.ts';
import { refusal } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { today } from '#electron/service/today.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { workOrder, type WorkedOrder } from '#electron/cli/work-order.ts';

/** Dates backward from the handover, forward from the deposit; without a handover, the earliest possible. */
export const prepareCommand: Command = {
  name: 'prepare',
  usage:
    'prepare --job J01 | --sizes T07 [--handover 2027-04-28] [--deposit DATE] [--on DATE] [--kit K] [--set line=RULE]: the prep plan',
  options: { ...orderOptions, ...bookOption, handover: 'text', deposit: 'text' },
  misuse: orderMisuse,
  run: (given) =>
    withBook(given, (book) => {
      const records = book.records();
      const worked = workOrder(given, records);
      if (!worked.ok) return refusal(...worked.fault);
      const job = records.job.get(worked.value.order.jobId ?? '');
      const wish = readWish(given, job, records);
      if (!wish.ok) return refusal(wish.fault);
      const plan = planOf(worked.value, wish.value, records);
      if (!plan.ok) return refusal(plan.fault);
      const what = job?.title ?? 'the tank';
      return {
        is: 'answer',
        json: { ...planJson(plan.value), checks: orderChecks(worked.value) },
        table: () =>
          planTable(plan.value, [...orderNotes(worked.value), '', ...sayPlan(plan.value, what, wish.value.on)]),
      };
    }),
};

/** The prep plan of a computed order, or a sentence that says why there is none. */
export function planOf({ bench, order }: WorkedOrder, wish: PlanWish, records: Records): Result<PrepPlan, string> {
  const facts = planFacts(
    bench,
    order.columns.map((column) => column.key),
    records,
  );
  if (!facts.ok) return failed(sayPlanFault(facts.fault));
  const plan = prepPlan(facts.value, wish);
  return plan.ok ? plan : failed(sayPlanFault(plan.fault));
}

/** Options on the command line override the job's values. */
export function readWish(given: Arguments, job: Job | undefined, records: Records): Result<PlanWish, string> {
  const days: { handover?: Day; deposit?: Day; on?: Day } = {};
  for (const name of ['handover', 'deposit', 'on'] as const) {
    const day = readDay(given, name);
    if (!day.ok) return day;
    if (day.value !== undefined) days[name] = day.value;
  }
  return ok({ ...daysOf(job), on: today(), calendar: calendarOf(records), ...days });
}

function daysOf(job: Job | undefined): Pick<PlanWish, 'handover' | 'deposit'> {
  return {
    ...(job?.handover !== undefined && { handover: job.handover }),
    ...(job?.depositOn !== undefined && { deposit: job.depositOn }),
  };
}

function planJson(plan: PrepPlan): Record<string, unknown> {
  const { build, handover, wanted, late, because, care } = plan;
  return {
    build,
    handover,
    wanted: wanted ?? null,
    late,
    because,
    steps: stepsOf(plan).map(({ step, date, orderBy }) => ({ step, date, orderBy: orderBy ?? null })),
    care,
    cautions: planCautions(plan).map(cautionJson),
  };
}

/** The steps of the plan, and that of wood, cork and sealant, which must be in before the background is glued. */
function stepsOf({ steps, hardscape }: PrepPlan): readonly (PrepPlan['steps'][number] | HardscapeStep)[] {
  return hardscape ? [...steps, hardscape] : steps;
}

type HardscapeStep = NonNullable<PrepPlan['hardscape']>;

function planTable(plan: PrepPlan, says: readonly string[]): string {
  const steps = stepsOf(plan).toSorted(byDay(({ date }) => date));
  const rows = steps.map(({ step, date, orderBy = '' }) => [step === 'hardscape' ? 'wood, cork' : step, orderBy, date]);
  const care = plan.care.map(({ act, date }) => [act, '', date]);
  return [
    textTable(['step', 'order by', 'done or in'], [...rows, ['handover', '', plan.handover], ...care]),
    ...says,
    ...underFigures([], planCautions(plan)),
  ].join('\n');
}
