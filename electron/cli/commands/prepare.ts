import { byDay, type Day } from '#shared-calc/calendar/day.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { orderFacts } from '#shared-calc/derive/job-plan.ts';
import { sayPlanFault } from '#shared-calc/words/say-plan-fault.ts';
import { freeStore, jobStore } from '#shared-calc/prepare/plan-store.ts';
import { prepPlan, type PlanWish, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { PrepStep } from '#shared-calc/prepare/prep-steps.ts';
import { withFacts, type StepFact } from '#shared-calc/prepare/step-facts.ts';
import { sayPlan } from '#shared-calc/prepare/say-plan.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { planCautions, sayState } from '#shared-calc/papers/prep-card.ts';
import { cautionJson, underFigures } from '#electron/cli/cautions-answer.ts';
import type { Command } from '#electron/cli/command.ts';
import { orderChecks, orderNotes } from '#electron/cli/order-checks.ts';
import { readFactsFile } from '#electron/cli/facts-file.ts';
import { orderMisuse, orderOptions } from '#electron/cli/order-options.ts';
import { refusal } from '#electron/cli/outcome.ts';
import type { Arguments } from '#electron/cli/read-arguments.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { textTable } from '#electron/cli/text-table.ts';
import { today } from '#electron/service/today.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';
import { workOrder, type WorkedOrder } from '#electron/cli/work-order.ts';

/** The plan of a morning, with what has happened of it; without a handover, the earliest possible. */
export const prepareCommand: Command = {
  name: 'prepare',
  usage:
    'prepare --job J01 | --sizes T07 [--handover 2027-04-28] [--deposit DATE] [--on DATE] [--facts FILE.csv] [--kit K] [--set line=RULE]: the prep plan',
  options: { ...orderOptions, ...bookOption, handover: 'text', deposit: 'text', facts: 'text' },
  misuse: orderMisuse,
  run: (given) =>
    withBook(given, (book) => {
      const records = book.records();
      const worked = workOrder(given, records);
      if (!worked.ok) return refusal(...worked.fault);
      const job = records.job.get(worked.value.order.jobId ?? '');
      const wish = readWish(given, job, records);
      if (!wish.ok) return refusal(wish.fault);
      const facts = readFactsFile(given.text('facts'));
      if (!facts.ok) return refusal(...facts.fault);
      const plan = planOf(worked.value, { ...wish.value, facts: facts.value }, records);
      if (!plan.ok) return refusal(plan.fault);
      const what = job?.title ?? 'the tank';
      return {
        is: 'answer',
        json: { ...planJson(plan.value), checks: orderChecks(worked.value) },
        table: () => {
          const { display: days } = worked.value.derived;
          const says = [...orderNotes(worked.value), '', ...sayPlan(plan.value, { what, days })];
          return planTable(plan.value, says, days);
        },
      };
    }),
};

/** The prep plan of a computed order, or a sentence that says why there is none. */
export function planOf(
  { bench, order }: WorkedOrder,
  { facts: told = [], ...wish }: PlanWish & { readonly facts?: readonly StepFact[] },
  records: Records,
): Result<PrepPlan, string> {
  const job = records.job.get(order.jobId ?? '');
  const store = job ? jobStore(records, job.id, wish.on) : freeStore(records, wish.on);
  const keys = order.columns.map((column) => column.key);
  const facts = orderFacts({ bench, keys, job }, { records, wish, store });
  if (!facts.ok) return failed(sayPlanFault(facts.fault));
  const plan = prepPlan(withFacts(facts.value, told), wish);
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
    steps: plan.steps.map(stepJson),
    care,
    cautions: planCautions(plan).map(cautionJson),
  };
}

function stepJson(step: PrepStep): Record<string, unknown> {
  const { step: name, date, orderBy = null, state, on, due, cleared, tub, overdue } = step;
  return {
    step: name,
    date,
    orderBy,
    state,
    ...(on !== undefined && { on }),
    ...(due !== undefined && { due }),
    ...(cleared !== undefined && { cleared }),
    ...(tub !== undefined && { tub }),
    ...(overdue && { says: 'overdue: ask' }),
  };
}

function planTable(plan: PrepPlan, says: readonly string[], display: Display): string {
  const written = (day: Day) => writeDay(day, display.dateOrder);
  const steps = plan.steps.toSorted(byDay(({ date }) => date));
  const rows = steps.map((step) => [
    step.step === 'hardscape' ? 'wood, cork' : step.step,
    step.orderBy === undefined ? '' : written(step.orderBy),
    written(step.date),
    sayState(step, display) ?? (step.state === 'open' ? '' : step.state),
  ]);
  const care = plan.care.map(({ act, date }) => [act, '', written(date)]);
  const handover = ['handover', '', written(plan.handover), ...(plan.handedOverOn === undefined ? [] : ['done'])];
  return [
    textTable(['step', 'order by', 'done or in', ''], [...rows, handover, ...care]),
    ...says,
    ...underFigures([], planCautions(plan), display),
  ].join('\n');
}
