import { orderNeeds } from '#shared-calc/bench/order-sums.ts';
import type { NeedsList } from '#shared-calc/buy/needs.ts';
import { stockOnHand } from '#shared-calc/buy/stock.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { jobSummary } from '#shared-calc/jobs/job-summary.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import { orderPlants, type PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { pickLists, type PickList } from '#shared-calc/papers/pick-list.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { crushesPlants } from '#shared-calc/jobs/crushes-plants.ts';

export interface JobNeeds {
  readonly list: NeedsList;
  readonly sizes: string;
  readonly plants: readonly PlantOrder[];
}

/** The needs list of a job: what the Store can give it comes off, plants stand by name. */
export function jobNeeds(records: Records, job: Job, on: Day): Result<JobNeeds, string> {
  const { sheet, bench, pricing } = openJob(records, job, on);
  if (sheet.columns.length === 0) {
    return failed(`${job.id} has no size yet: take one first.`);
  }
  const stock = stockOnHand(records.stockEntry.values(), { on, jobs: [job.id] });
  const list = orderNeeds(bench, keysOf(sheet), { ...pricing, stock });
  const planted = { bench, audience: job.audience, animalCrushes: crushesPlants(job.animals) };
  const plants = orderPlants([planted], records.plant.values());
  if (!list.ok) return failed(sayOrderFault(list.fault, calledByLines(bench.input())));
  return ok({ list: list.value, sizes: jobSummary(records, job).sizes.join(', '), plants });
}

export interface JobOnDay {
  readonly job: Job;
  readonly on: Day;
  readonly display: Display;
}

/** What to have ready on build day, a list for each size of a job. */
export function jobPickLists(records: Records, { job, on, display }: JobOnDay): readonly PickList[] {
  const { bench } = openJob(records, job, on);
  const lists = pickLists(bench, records, display);
  return lists;
}
