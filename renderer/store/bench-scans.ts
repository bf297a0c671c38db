import type { Clock } from './clock.ts';
import type { PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import type { BenchLimits } from './bench-limits.ts';
import { noScan, scanColumn, withLimits, type ColumnScan, type Loud } from './column-scan.ts';
import { hasMoreAfterSlice } from './slice.ts';
import type { WorkedBench } from './worked-bench.ts';

/** Per line, counts of flagged cells over all sizes, by flag. */
export type LoudTotals = ReadonlyMap<string, ReadonlyMap<Loud, number>>;

/** Columns scanned at once; the rest follows in slices. */
const AT_ONCE = 8;

export interface BenchScans {
  /** The current scan of one column. */
  readonly of: (column: string) => ColumnScan;
  /** Totals over all columns. Columns not scanned yet follow in slices; `later` is called when some were. */
  readonly totals: () => LoudTotals;
}

interface Known {
  readonly revision: number;
  readonly limits: readonly PlaceCheck[];
  /** Of the lines alone. */
  readonly lines: ColumnScan;
  readonly scan: ColumnScan;
}

interface State {
  readonly worked: WorkedBench;
  readonly limits: BenchLimits;
  readonly known: Map<string, Known>;
  readonly totals: Map<string, Map<Loud, number>>;
  planned: boolean;
}

interface ScanParts {
  readonly worked: WorkedBench;
  readonly limits: BenchLimits;
  readonly clock: Clock;
}

export function benchScans({ worked, limits, clock }: ScanParts, later: () => void): BenchScans {
  const state: State = { worked, limits, known: new Map(), totals: new Map(), planned: false };
  const isBehind = () => behindIn(state).length > 0 || limits.isBehind();
  let moved = false;
  const step = () => {
    if (limits.isBehind()) {
      limits.work();
      return true;
    }
    const behind = behindIn(state).slice(0, AT_ONCE);
    for (const column of behind) scanOf(state, column);
    moved ||= behind.length > 0;
    return behind.length > 0;
  };
  const goOn = () => {
    if (hasMoreAfterSlice(step, clock)) {
      clock.soon(goOn);
      return;
    }
    state.planned = false;
    if (moved) later();
    moved = false;
  };
  return {
    of: (column) => scanOf(state, column),
    totals: () => {
      dropGone(state);
      for (const column of behindIn(state).slice(0, AT_ONCE)) scanOf(state, column);
      if (!state.planned && !worked.isBehind() && isBehind()) {
        state.planned = true;
        clock.soon(goOn);
      }
      return state.totals;
    },
  };
}

function scanOf({ worked, limits, known, totals }: State, column: string): ColumnScan {
  if (!worked.isWorked(column)) return noScan;
  const revision = worked.revision(column);
  const last = known.get(column);
  const place = limits.of(column);
  if (last?.revision === revision && last.limits === place) return last.scan;
  const lines = last?.revision === revision ? last.lines : scanColumn(worked.bench(), column);
  const scan = withLimits(lines, place);
  count(totals, last?.scan ?? noScan, -1);
  count(totals, scan, 1);
  known.set(column, { revision, limits: place, lines, scan });
  return scan;
}

function behindIn({ worked, limits, known }: State): readonly string[] {
  const keys = worked.source().columns.map((column) => column.key);
  return keys.filter((key) => {
    const last = known.get(key);
    return worked.isWorked(key) && (last?.revision !== worked.revision(key) || last.limits !== limits.of(key));
  });
}

function dropGone({ worked, known, totals }: State): void {
  const current = new Set(worked.source().columns.map((column) => column.key));
  for (const [column, { scan }] of known) {
    if (current.has(column)) continue;
    count(totals, scan, -1);
    known.delete(column);
  }
}

function count(totals: Map<string, Map<Loud, number>>, scan: ColumnScan, by: 1 | -1): void {
  for (const [line, louds] of scan.byLine) {
    const sums = totals.get(line) ?? new Map<Loud, number>();
    for (const loud of louds) sums.set(loud, (sums.get(loud) ?? 0) + by);
    totals.set(line, sums);
  }
}
