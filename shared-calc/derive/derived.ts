import type { CheckResult } from '#shared-calc/bench/bench-types.ts';
import { checksOf } from '#shared-calc/bench/checks.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { needAmounts, type NoAmount } from '#shared-calc/bench/order-amounts.ts';
import {
  knownSums,
  wholeSums,
  type KnownSums,
  type OrderFault,
  type OrderSums,
} from '#shared-calc/bench/order-sums.ts';
import { allBuilds } from '#shared-calc/buy/all-builds.ts';
import { byMaterial, type NeedAmount } from '#shared-calc/buy/needs.ts';
import { priceBook, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import { benchPlace, type PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import type { PlantedBench } from '#shared-calc/jobs/order-plants.ts';
import { recipesOf } from '#shared-calc/jobs/job-recipes.ts';
import { keysOf, type JobSheet } from '#shared-calc/jobs/job-sheet.ts';
import type { SoldHouse } from '#shared-calc/jobs/sold-house.ts';
import { sheetInput, type WorkedJob } from '#shared-calc/jobs/worked-job.ts';
import { houseAsSold, houseNow, pricesAsSold, pricesToBuy, rulesAsSold } from '#shared-calc/jobs/working-house.ts';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { jobStore } from '#shared-calc/prepare/plan-store.ts';
import type { PlanFault } from '#shared-calc/prepare/plan-fault.ts';
import { quoteRules, type QuoteRules } from '#shared-calc/price/quote-rules.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Job, Line, Records, Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { soldJob, type SoldJob } from './sold-job.ts';
import { jobPlan, type JobPlan } from './job-plan.ts';
import { openJobSheets, type JobSheets } from '#shared-calc/jobs/job-sheets.ts';
import { useDays } from './use-days.ts';
import { jobsRun, type JobsRun, type JobsToBuy } from './jobs-run.ts';
import { lazy, memo, memos } from '#shared-calc/records/memo.ts';

/**
 * A book's records on a day, and what is worked out from them, each part on first use. After an update, parts whose
 * records did not change are the same objects.
 */
export interface Derived {
  readonly records: Records;
  readonly today: Day;
  readonly workshop: Workshop;
  readonly display: Display;
  readonly calendar: WorkCalendar;
  readonly prices: PriceBook;
  readonly rules: QuoteRules;
  readonly lines: (recipe: string) => readonly Line[];
  /** A job with its sizes and written-over cells, before anything is worked out. */
  readonly sheet: (id: string) => JobSheet | undefined;
  readonly job: (id: string) => DerivedJob | undefined;
  readonly run: (asked: JobsToBuy) => Result<JobsRun, JobFault>;
  /** The derivation after a change, or on another day; only parts that depend on the change are worked out again. */
  readonly update: (records: Records, today?: Day) => Derived;
}

/** One job, priced on the day of the derivation by its own basis. */
export interface DerivedJob extends WorkedJob {
  readonly job: Job;
  /** Keys of its columns, in order. */
  readonly keys: readonly string[];
  readonly needs: () => Result<readonly NeedAmount[], NoAmount>;
  /** What it uses of each material that comes in packs, for all its builds, in the material's unit. */
  readonly uses: () => Result<ReadonlyMap<string, number>, JobFault>;
  /** Its bench, with the place and animals that decide its plants. */
  readonly planted: PlantedBench;
  /** What is known of the sums of some columns together; of all if none are given. */
  readonly known: (columns?: readonly string[]) => Result<KnownSums, OrderFault>;
  /** The same, or everything that is missing. */
  readonly sums: (columns?: readonly string[]) => Result<OrderSums, OrderFault>;
  readonly checks: (column: string) => readonly CheckResult[];
  /** The limits of its place for a size. */
  readonly place: (column: string) => readonly PlaceCheck[];
  readonly plan: () => Result<JobPlan, PlanFault>;
  /** The day on which it uses a material, from which stock for it is judged. */
  readonly useOn: (material: string) => Day;
  /** What it was sold as, from *accepted* on; none while it follows its recipe. */
  readonly sold?: SoldJob;
}

export function derive(records: Records, today: Day): Derived {
  return derivedWith(openCaches(), records, today);
}

type Caches = ReturnType<typeof openCaches>;

/** Caches that outlive a change. Each keeps the last value it made, so an older derivation stays right, only slower. */
function openCaches() {
  return {
    sheets: openJobSheets(),
    display: memo<Display>(),
    calendar: memo<WorkCalendar>(),
    prices: memo<PriceBook>(),
    rules: memo<QuoteRules>(),
    jobs: memos<Omit<DerivedJob, 'plan'>>(),
    plans: memos<DerivedJob>(),
    runs: memos<Result<JobsRun, JobFault>>(),
  };
}

/** The workshop-wide inputs of a job. */
interface Shared extends Pick<Derived, 'records' | 'today' | 'workshop' | 'display'> {
  readonly sheets: () => JobSheets;
  readonly calendar: () => WorkCalendar;
  readonly prices: () => PriceBook;
  readonly rules: () => QuoteRules;
}

function derivedWith(caches: Caches, records: Records, today: Day): Derived {
  const workshop = workshopOf(records);
  const { material, pack, packPrice, supplier, tank, plant, rate, margin, taxClass, closedDay } = records;
  const shared: Shared = {
    records,
    today,
    workshop,
    display: caches.display([workshop], () => displayOf(workshop)),
    sheets: lazy(() => caches.sheets(records)),
    calendar: lazy(() => caches.calendar([workshop, closedDay], () => calendarOf(records))),
    prices: lazy(() =>
      caches.prices([workshop.oldPriceDays, material, pack, packPrice, supplier, tank, plant, today], () =>
        priceBook(records, { on: today, oldPriceDays: workshop.oldPriceDays }),
      ),
    ),
    rules: lazy(() => caches.rules([workshop, rate, margin, taxClass], () => quoteRules(workshop, records))),
  };
  const derived: Omit<Derived, 'run'> = {
    records,
    today,
    workshop,
    display: shared.display,
    get calendar() {
      return shared.calendar();
    },
    get prices() {
      return shared.prices();
    },
    get rules() {
      return shared.rules();
    },
    lines: (recipe) => shared.sheets().lines(recipe),
    sheet: (id) => {
      const job = records.job.get(id);
      return job && shared.sheets().sheet(job);
    },
    job: (id) => {
      const job = records.job.get(id);
      return job && jobWith(caches, shared, job);
    },
    update: (next, day = today) => derivedWith(caches, next, day),
  };
  return Object.assign(derived, { run: (asked: JobsToBuy) => runOver(caches, derived, asked) });
}

function runOver(caches: Caches, derived: Omit<Derived, 'run'>, asked: JobsToBuy): Result<JobsRun, JobFault> {
  const { records, today, prices, job } = derived;
  const jobs = asked.jobs.map((id) => job(id));
  const on = [
    today,
    prices,
    records.move,
    records.order,
    records.recipe,
    records.line,
    records.difference,
    records.plant,
    asked.more,
    asked.materials?.join(),
    sayFrom(asked),
    ...jobs,
  ];
  // If one of its jobs is missing, the cache depends on all jobs.
  return caches.runs(asked.jobs.join(), jobs.includes(undefined) ? [...on, records.job] : on, () =>
    jobsRun(derived, asked),
  );
}

function sayFrom({ from = new Map<string, string>() }: JobsToBuy): string {
  return [...from].flat().join();
}

/** A job's plan also reads what has happened of it; its bench does not. */
function jobWith({ jobs, plans }: Caches, shared: Shared, job: Job): DerivedJob {
  const { records, today, display } = shared;
  const worked = workedWith(jobs, shared, job);
  return plans(job.id, [worked, records.done, records.tub, records.move, records.order], () => {
    const wish = { on: today, calendar: shared.calendar() };
    const store = jobStore(records, job.id, today);
    return { ...worked, plan: lazy(() => jobPlan(worked, { records, display, wish, store })) };
  });
}

function workedWith(jobs: Caches['jobs'], shared: Shared, job: Job): Omit<DerivedJob, 'plan'> {
  const { records, today, display, workshop } = shared;
  const sheet = shared.sheets().sheet(job);
  const sold = shared.sheets().sold(job);
  const lines = shared.sheets().linesOf(job);
  const now = shared.prices();
  const on = [sheet, sold, lines, today, workshop, now, shared.rules(), shared.calendar()];
  const { material, supplier, cultureKind, recipe, rate, houseChange } = records;
  return jobs(job.id, [...on, material, supplier, cultureKind, recipe, rate, houseChange], () => {
    const { pricing, toBuy, house } = termsOf(shared, { job, sheet, sold });
    const bench = onceBench(sheetInput(sheet, lines, pricing.prices));
    const keys = keysOf(sheet);
    const worked = new Map<string, Result<KnownSums, OrderFault>>();
    const known = (columns = keys) => getOr(worked, columns.join('\n'), () => knownSums(bench, columns, pricing));
    const sums = (columns = keys) => wholeSums(known(columns));
    const checks = new Map<string, readonly CheckResult[]>();
    const needs = lazy(() => needAmounts(bench, keys, toBuy));
    return {
      job,
      sheet,
      lines,
      keys,
      bench,
      pricing,
      house,
      planted: { bench, survey: job.survey },
      needs,
      uses: lazy(() => usesOf(job.id, needs(), toBuy)),
      known,
      sums,
      checks: (column) => getOr(checks, column, () => checksOf(bench, column, display)),
      place: benchPlace(bench, job, display),
      useOn: useDays(
        { bench, keys, on: today, calendar: shared.calendar(), handover: job.handover, deposit: job.depositOn },
        records,
      ),
      ...(sold && { sold: soldJob({ job, house: sold, sheet, sums }) }),
    };
  });
}

interface Worked {
  readonly job: Job;
  readonly sheet: JobSheet;
  readonly sold: SoldHouse | undefined;
}

/** What a job is priced, bought and quoted with: all of today, or priced as it was sold. */
function termsOf({ records, workshop, prices, rules }: Shared, { job, sheet, sold }: Worked) {
  const rest = { basis: job.basis, oneOffs: sheet.oneOffs };
  const now = prices();
  if (!sold) {
    const house = houseNow(records, job.recipe, recipesOf(records, job));
    return { toBuy: now, house, pricing: { prices: now, rules: rules(), ...rest } };
  }
  const asSold = pricesAsSold(sold, now);
  const pricing = { prices: asSold, rules: rulesAsSold(sold, records), ...rest };
  return {
    toBuy: pricesToBuy(asSold, now),
    house: houseAsSold(sold, workshop, houseNow(records, job.recipe).recipeOf),
    pricing,
  };
}

function usesOf(
  job: string,
  needs: Result<readonly NeedAmount[], NoAmount>,
  { goods }: PriceBook,
): Result<ReadonlyMap<string, number>, JobFault> {
  if (!needs.ok) return failed({ kind: 'not-worked', job, fault: needs.fault });
  const uses = new Map<string, number>();
  for (const [material, each] of byMaterial(allBuilds(needs.value), undefined)) {
    if (goods.get(material)?.sale !== 'packs') continue;
    uses.set(
      material,
      each.reduce((sum, use) => sum + use.amount, 0),
    );
  }
  return ok(uses);
}

function getOr<T>(known: Map<string, T>, key: string, work: () => T): T {
  const ready = known.get(key) ?? work();
  known.set(key, ready);
  return ready;
}
