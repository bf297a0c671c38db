import { chosenRun } from '#shared-calc/buy/chosen-packs.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { packChoices, suppliersByHand } from '#shared-calc/jobs/pack-choices.ts';
import { PLANTS_GROUP } from '#shared-calc/price/quote-rules.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { Derived } from './derived.ts';

/** Packs of one size that are ordered and not received yet. */
export interface ExpectedPacks {
  readonly material: string;
  readonly label: string;
  readonly unit: string;
  /** The content of one pack. */
  readonly amount: number;
  readonly count: number;
  readonly isPlant: boolean;
}

export interface ExpectedOrder {
  readonly supplier: string;
  readonly name: string;
  readonly packs: readonly ExpectedPacks[];
}

/** Jobs whose goods are ordered and not received. */
export function orderedJobs({ job }: Pick<Records, 'job'>): readonly string[] {
  return [...job.values()].filter(({ state }) => state === 'ordered').map(({ id }) => id);
}

/** What ordered jobs still need beyond what the Store has for them, by supplier: what their orders should bring. */
export function expectedGoods({ records, prices, run }: Derived): Result<readonly ExpectedOrder[], JobFault> {
  const jobs = orderedJobs(records);
  if (jobs.length === 0) return ok([]);
  const done = run({ jobs, from: suppliersByHand(records, jobs) });
  if (!done.ok) return done;
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
