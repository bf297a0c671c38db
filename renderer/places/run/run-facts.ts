import { priceBook, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { jobsRun } from '#shared-calc/jobs/jobs-run.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import { orderPlants, type PlantedBench, type PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { paneCuts, type PaneCut } from '#shared-calc/jobs/pane-cuts.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { planFacts } from '#shared-calc/prepare/plan-facts.ts';
import { prepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { crushesPlants } from '#shared-calc/jobs/crushes-plants.ts';
import type { PlannedJob } from '#shared-calc/papers/order-days.ts';

/** All that a shopping run over some jobs is shown and ordered from. */
export interface RunFacts {
  readonly run: ShoppingRun;
  readonly unpaid: readonly string[];
  readonly prices: PriceBook;
  readonly panes: readonly PaneCut[];
  readonly plants: readonly PlantOrder[];
  /** Jobs with a handover wanted; the others ask for no day. */
  readonly planned: readonly PlannedJob[];
}

/** Works a shopping run over jobs, with the panes, the plants by name and the days that they ask for. */
export function runFacts(records: Records, jobs: readonly string[], on: Day): Result<RunFacts, string> {
  const done = jobsRun(records, { jobs, on });
  if (!done.ok) return failed(sayJobFault(done.fault));
  const opened = jobs.flatMap((id) => {
    const job = records.job.get(id);
    return job ? [{ job, ...openJob(records, job, on) }] : [];
  });
  const planted = opened.map(({ job, bench }): PlantedBench => {
    return { bench, audience: job.audience, animalCrushes: crushesPlants(job.animals) };
  });
  const facts = {
    ...done.value,
    prices: priceBook(records, { on, oldPriceDays: workshopOf(records).oldPriceDays }),
    panes: opened.flatMap(({ job, bench }) =>
      paneCuts(bench).map((cut) => ({ ...cut, column: `${job.id} ${cut.column}` })),
    ),
    plants: orderPlants(planted, records.plant.values()),
    planned: opened.flatMap(({ job, bench, sheet }) => plannedJob(records, job, { bench, columns: keysOf(sheet), on })),
  };
  return ok(facts);
}

interface Planned {
  readonly bench: Bench;
  readonly columns: readonly string[];
  readonly on: Day;
}

function plannedJob(records: Records, job: Job, { bench, columns, on }: Planned): readonly PlannedJob[] {
  if (job.handover === undefined) return [];
  const facts = planFacts(bench, columns, records);
  if (!facts.ok) return [];
  const { handover, depositOn } = job;
  const wish = { handover, on, calendar: calendarOf(records), ...(depositOn !== undefined && { deposit: depositOn }) };
  const plan = prepPlan(facts.value, wish);
  return plan.ok ? [{ job: job.id, plan: plan.value }] : [];
}
