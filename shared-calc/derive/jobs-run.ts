import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { NoAmount } from '#shared-calc/bench/order-amounts.ts';
import type { NeedAmount } from '#shared-calc/buy/needs.ts';
import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import {
  shoppingRun,
  usedAmounts,
  type GivenGoods,
  type RunPart,
  type ShoppingRun,
} from '#shared-calc/buy/shopping-run.ts';
import { allot, NOTHING_GIVEN, type Allotment, type Claim } from '#shared-calc/buy/allot.ts';
import { isToBuy } from '#shared-calc/buy/no-supplier.ts';
import { pooledBuilds } from '#shared-calc/buy/all-builds.ts';
import { stock, type LedgerRecords } from '#shared-calc/buy/ledger.ts';
import { underLeast } from '#shared-calc/buy/least-levels.ts';
import { NO_STOCK, type Stock } from '#shared-calc/buy/stock.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { pricedPlants } from '#shared-calc/jobs/choose-plants.ts';
import { isBefore, isGateOpen } from '#shared-calc/jobs/move-job.ts';
import { orderPlants, type PlantedBench, type PlantOrder } from '#shared-calc/jobs/order-plants.ts';
import { isBoughtOnce, oneOffNeed, withOneOffs } from '#shared-calc/jobs/one-off-goods.ts';
import type { JobSheet } from '#shared-calc/jobs/job-sheet.ts';
import type { PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import type { PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { Job, QuoteLine, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { JobPlan } from './job-plan.ts';
import { lazy } from '#shared-calc/records/memo.ts';

/** The parts of a worked job that a run reads. */
interface RunJob {
  readonly job: Job;
  readonly keys: readonly string[];
  readonly bench: Bench;
  readonly sheet: Pick<JobSheet, 'oneOffs'>;
  readonly planted: PlantedBench;
  readonly needs: () => Result<readonly NeedAmount[], NoAmount>;
  readonly plan: () => Result<JobPlan, PlanFault>;
  readonly useOn: (material: string) => Day;
}

interface RunBook {
  readonly records: LedgerRecords & Pick<Records, 'job' | 'material'>;
  readonly prices: PriceBook;
  readonly today: Day;
  readonly job: (id: string) => RunJob | undefined;
}

export interface JobsToBuy {
  readonly jobs: readonly string[];
  /** On hand in addition to the Store. */
  readonly more?: Stock;
  readonly materials?: readonly string[];
  /** Suppliers taken by hand, by material. */
  readonly from?: ReadonlyMap<string, string>;
}

export interface JobsRun {
  readonly run: ShoppingRun;
  /** Jobs on it whose gate is not open: nothing cut to size should be ordered for them yet. */
  readonly unpaid: readonly string[];
  /** What the Store and the open orders give to each job, by material, jobs in order of their day of use. */
  readonly takes: Allotment['takes'];
  /** Of each job. */
  readonly benches: readonly Bench[];
  readonly plants: () => readonly PlantOrder[];
  /** Jobs with a wanted handover; other jobs set no date. */
  readonly planned: () => readonly { readonly job: string; readonly plan: PrepPlan }[];
}

/**
 * One shopping run over jobs, rounded up to whole packs once over all of them. What the Store and the open orders give is
 * taken off first, to the jobs in order of their day of use: their own, then what is free. A material under its least
 * level is filled up as well. Also gives each job bought by itself.
 */
export function jobsRun(
  book: RunBook,
  { jobs: named, more = NO_STOCK, materials, from }: JobsToBuy,
): Result<JobsRun, JobFault> {
  const { records, job: jobOf } = book;
  const parts: RunPart[] = [];
  const worked: RunJob[] = [];
  const jobs = [...new Set(named)];
  for (const id of jobs) {
    const found = findJob(records, id);
    const job = jobOf(id);
    if (!found.ok || !job) return found.ok ? failed({ kind: 'no-job', job: id, jobs: [] }) : found;
    const part = partOf(job);
    if (!part.ok) return part;
    parts.push(part.value);
    worked.push(job);
  }
  const prices = withOneOffs(book.prices, worked.flatMap(boughtOnce));
  const given = givenTo({ ...book, prices }, { worked, parts, more, materials });
  const run = shoppingRun(parts, { prices, stock: NO_STOCK, materials, ...(from && { from }) }, given);
  if (!run.ok) return failed({ kind: 'not-worked', job: jobs.join(', '), fault: run.fault });
  return ok({
    run: run.value,
    takes: given.takes,
    unpaid: worked.filter(({ job }) => !isGateOpen(job)).map(({ job }) => job.id),
    benches: worked.map(({ bench }) => bench),
    plants: lazy(() =>
      orderPlants(
        worked.map(({ planted }) => planted),
        pricedPlants(records, prices),
      ),
    ),
    planned: lazy(() => worked.flatMap(wantedPlan)),
  });
}

interface ToGive {
  readonly materials: JobsToBuy['materials'] | undefined;
  readonly worked: readonly RunJob[];
  readonly parts: readonly RunPart[];
  readonly more: Stock;
}

function givenTo(
  { records, prices, today: asked }: RunBook,
  { worked, parts, more, materials }: ToGive,
): GivenGoods & Allotment {
  const claims = parts.map((part, at): Claim => ({
    job: part.job,
    needs: usedAmounts(pooledBuilds(part.needs)),
    useOn: worked[at]?.useOn ?? (() => asked),
  }));
  const { goods, given, takes } = allot(claims, {
    stockOn: (material, use) => stock(records, material, { asked, use }),
    more,
    isCut: (material) => prices.goods.get(material)?.sale === 'cut',
  });
  const low = underLeast(records, asked, (material) => goods.get(material)?.lent ?? 0);
  const listed = low.filter(({ material }) => !materials || materials.includes(material.id));
  const unclaimed = listed.filter(({ material }) => !goods.has(material.id));
  const forStoreAlone = unclaimed.map(
    ({ material, free }) => [material.id, { ...NOTHING_GIVEN, onHand: free }] as const,
  );
  return {
    goods: new Map([...goods, ...forStoreAlone]),
    given,
    takes,
    forStore: new Map(listed.map(({ material, buy }) => [material.id, buy])),
  };
}

/**
 * The jobs that are ready for a shopping run: paid, and not ordered yet, or with orders that do not bring all they need.
 * One that was ordered before orders were written down is taken by hand.
 */
export function jobsToBuy({ records, run }: ToBuy): readonly string[] {
  const placed = new Set(
    [...records.order.values()].flatMap(({ lines }) => lines.flatMap((line) => line.for.map(({ job }) => job))),
  );
  return [...records.job.values()]
    .filter((job) => isGateOpen(job) && isBefore(job.state, 'built'))
    .filter(({ id, state }) => isBefore(state, 'ordered') || (placed.has(id) && isLacking(run({ jobs: [id] }))))
    .map(({ id }) => id);
}

interface ToBuy {
  readonly records: Pick<Records, 'job' | 'order'>;
  readonly run: (asked: JobsToBuy) => Result<JobsRun, JobFault>;
}

function isLacking(run: Result<JobsRun, JobFault>): boolean {
  return run.ok && run.value.run.materials.some((need) => isToBuy(need) || need.lacks);
}

function boughtOnce({ sheet }: RunJob): readonly QuoteLine[] {
  return sheet.oneOffs.filter(isBoughtOnce);
}

function partOf(worked: RunJob): Result<RunPart, JobFault> {
  const {
    job: { id },
    keys,
    needs,
  } = worked;
  if (keys.length === 0) return failed({ kind: 'no-sizes', job: id });
  const needed = needs();
  return needed.ok
    ? ok({ id, job: id, needs: [...needed.value, ...boughtOnce(worked).map(oneOffNeed)] })
    : failed({ kind: 'not-worked', job: id, fault: needed.fault });
}

function wantedPlan({ job, plan }: RunJob): ReturnType<JobsRun['planned']> {
  const planned = job.handover === undefined ? undefined : plan();
  return planned?.ok ? [{ job: job.id, plan: planned.value.plan }] : [];
}
