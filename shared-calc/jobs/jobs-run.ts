import { needAmounts } from '#shared-calc/bench/order-amounts.ts';
import { shoppingRun, type RunPart, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { NO_STOCK, stockOnHand, type Stock } from '#shared-calc/buy/stock.ts';
import { priceBook } from '#shared-calc/buy/price-book.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { findJob } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { isBefore, isGateOpen } from './move-job.ts';
import { openJob } from './open-sheet.ts';

export interface JobsToBuy {
  readonly jobs: readonly string[];
  readonly on: Day;
  /** On hand beside what the Store has. */
  readonly more?: Stock;
  readonly materials?: readonly string[];
}

export interface JobsRun {
  readonly run: ShoppingRun;
  /** Jobs on it that the gate is not open for: nothing cut to size should be ordered for them yet. */
  readonly unpaid: readonly string[];
}

/**
 * One shopping run over jobs, whole packs rounded once over all of them. What the Store can give comes off first:
 * what is kept for one of these jobs counts, what is kept for another does not. Beside it each job bought by itself.
 */
export function jobsRun(
  records: Records,
  { jobs: named, on, more = NO_STOCK, materials }: JobsToBuy,
): Result<JobsRun, JobFault> {
  const parts: RunPart[] = [];
  const unpaid: string[] = [];
  const jobs = [...new Set(named)];
  for (const id of jobs) {
    const job = findJob(records, id);
    if (!job.ok) return job;
    if (!isGateOpen(job.value)) unpaid.push(id);
    const part = partOf(records, job.value, on);
    if (!part.ok) return part;
    parts.push(part.value);
  }
  const prices = priceBook(records, { on, oldPriceDays: workshopOf(records).oldPriceDays });
  const stock = addStock(stockOnHand(records.stockEntry.values(), { on, jobs }), more);
  const run = shoppingRun(parts, { prices, stock, materials });
  return run.ok
    ? ok({ run: run.value, unpaid })
    : failed({ kind: 'not-worked', job: jobs.join(', '), fault: run.fault });
}

/** The jobs that a shopping run is due for: paid, and not ordered yet. */
export function jobsToBuy(records: Pick<Records, 'job'>): readonly string[] {
  return [...records.job.values()]
    .filter((job) => isGateOpen(job) && isBefore(job.state, 'ordered'))
    .map((job) => job.id);
}

function partOf(records: Records, job: Job, on: Day): Result<RunPart, JobFault> {
  const { sheet, bench, pricing } = openJob(records, job, on);
  const keys = sheet.columns.map((column) => column.key);
  const needs = needAmounts(bench, keys, pricing.prices);
  if (keys.length === 0) return failed({ kind: 'no-sizes', job: job.id });
  if (!needs.ok) return failed({ kind: 'not-worked', job: job.id, fault: needs.fault });
  return ok({ id: job.id, job: job.id, needs: needs.value });
}

function addStock(one: Stock, other: Stock): Stock {
  const sum = new Map(one);
  for (const [material, amount] of other) sum.set(material, (sum.get(material) ?? 0) + amount);
  return sum;
}
