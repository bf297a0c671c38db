import { knownSums, type KnownSums, type OrderFault } from '#shared-calc/bench/order-sums.ts';
import { lineFor } from '#shared-calc/recipe/lines-by-use.ts';
import { sameList } from '#shared-calc/records/memo.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { Clock } from './clock.ts';
import type { WorkedBench } from './worked-bench.ts';

/** What all builds of a job come to. */
export interface JobTotals {
  readonly sums: Result<Omit<KnownSums, 'needs'>, OrderFault>;
  /** Of all filled tanks; `undefined` while none is known. */
  readonly mass: { readonly kg: number; readonly isPart: boolean } | undefined;
  readonly builds: number;
}

interface TotalsParts {
  readonly worked: WorkedBench;
  readonly clock: Clock;
}

/**
 * The totals of a job of more than one build. After an edit those of before it are given; the new ones are worked once
 * its frame is drawn, and `later` is called where they are others.
 */
export function benchTotals({ worked, clock }: TotalsParts, later: () => void): () => JobTotals | undefined {
  let known: { readonly stamp: readonly unknown[]; readonly totals: JobTotals } | undefined;
  let isPlanned = false;
  const isKnown = () => known !== undefined && sameList(stampOf(worked), known.stamp) === known.stamp;
  const work = () => {
    isPlanned = false;
    if (worked.isClosed() || worked.isBehind() || isKnown()) return;
    const [before, totals] = [known?.totals, totalsOf(worked)];
    const isSame = before !== undefined && sameData(before, totals);
    known = { stamp: stampOf(worked), totals: isSame ? before : totals };
    if (!isSame) later();
  };
  return () => {
    if (buildsOf(worked) < 2) return undefined;
    if (!isPlanned && !worked.isBehind() && !isKnown()) {
      isPlanned = true;
      clock.soon(work);
    }
    return known?.totals;
  };
}

/** Differs whenever a total may have changed. */
function stampOf(worked: WorkedBench): readonly unknown[] {
  const { columns, pricing } = worked.source();
  return [pricing, ...columns.flatMap(({ key, count }) => [key, count, worked.revision(key)])];
}

function buildsOf(worked: WorkedBench): number {
  return worked.source().columns.reduce((sum, { count }) => sum + count, 0);
}

function totalsOf(worked: WorkedBench): JobTotals {
  const { columns, pricing } = worked.source();
  const keys = columns.map(({ key }) => key);
  const sums = knownSums(worked.bench(), keys, pricing);
  return { sums: sums.ok ? ok(withoutNeeds(sums.value)) : sums, mass: massOf(worked), builds: buildsOf(worked) };
}

function withoutNeeds({ quote, missing, guesses, hoursKnown }: KnownSums): Omit<KnownSums, 'needs'> {
  return { quote, missing, guesses, hoursKnown };
}

function massOf(worked: WorkedBench): JobTotals['mass'] {
  const bench = worked.bench();
  const masses = worked.source().columns.map(({ key, count }) => {
    const line = lineFor(bench.lines(key), 'filledMass');
    const value = line && bench.box(key, line.name).value;
    return typeof value === 'number' ? value * count : undefined;
  });
  const known = masses.filter((mass) => mass !== undefined);
  if (known.length === 0) return undefined;
  return { kg: known.reduce((sum, mass) => sum + mass, 0), isPart: known.length < masses.length };
}
