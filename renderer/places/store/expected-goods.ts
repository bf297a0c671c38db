import { chosenRun } from '#shared-calc/buy/chosen-packs.ts';
import { priceBook } from '#shared-calc/buy/price-book.ts';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { jobsRun } from '#shared-calc/jobs/jobs-run.ts';
import { packChoices, spendChoices } from '#shared-calc/jobs/pack-choices.ts';
import { receiveOrder } from '#shared-calc/jobs/receive-order.ts';
import { PLANTS_GROUP } from '#shared-calc/price/quote-rules.ts';
import { squashChanges, type Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';

/** Packs of one size that ordered jobs still wait for. */
export interface ExpectedPacks {
  readonly material: string;
  readonly label: string;
  readonly unit: string;
  /** What one pack holds. */
  readonly amount: number;
  readonly count: number;
  readonly isPlant: boolean;
}

export interface ExpectedOrder {
  readonly supplier: string;
  readonly name: string;
  readonly packs: readonly ExpectedPacks[];
}

/** Jobs whose goods are on their way. */
function orderedJobs({ job }: Pick<Records, 'job'>): readonly string[] {
  return [...job.values()].filter(({ state }) => state === 'ordered').map(({ id }) => id);
}

/** What ordered jobs still need beyond what the Store has for them, by supplier: what their orders should bring. */
export function expectedGoods(records: Records, on: Day): Result<readonly ExpectedOrder[], string> {
  const jobs = orderedJobs(records);
  if (jobs.length === 0) return ok([]);
  const done = jobsRun(records, { jobs, on });
  if (!done.ok) return failed(sayJobFault(done.fault));
  const prices = priceBook(records, { on, oldPriceDays: workshopOf(records).oldPriceDays });
  const { materials, suppliers } = chosenRun(done.value.run, packChoices(records, jobs), prices);
  const orders = suppliers.map(({ supplier, name }) => ({
    supplier,
    name,
    packs: materials
      .filter((need) => need.supplier === supplier)
      .flatMap(({ material, label, unit, group, packs }) =>
        packs.map(({ amount, count }) => ({ material, label, unit, amount, count, isPlant: group === PLANTS_GROUP })),
      ),
  }));
  return ok(orders.filter(({ packs }) => packs.length > 0));
}

export interface Received {
  readonly order: ExpectedOrder;
  /** How many of each pack came, in the order of its packs. */
  readonly counts: readonly number[];
  readonly on: Day;
  /** Calendar days that plants stand apart. */
  readonly quarantineDays: number;
}

/** Puts an order that came in into the Store; plants go into quarantine, and a choice of packs by hand is spent. */
export function receive(records: Records, { order, counts, on, quarantineDays }: Received): Change {
  const packs = order.packs.flatMap(({ material, amount, isPlant }, at) => {
    const count = counts[at] ?? 0;
    if (count <= 0) return [];
    return [{ material, amount, count, ...(isPlant && { quarantineUntil: addDays(on, quarantineDays) }) }];
  });
  const came = receiveOrder(records, packs, order.name);
  const materials = packs.map(({ material }) => material);
  return squashChanges(came.label, [came, spendChoices(records, orderedJobs(records), materials)]);
}
