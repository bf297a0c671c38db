import type { Clock } from './clock.ts';
import { noScan, scanColumn, type ColumnScan, type Loud } from './column-scan.ts';
import type { WorkedBench } from './worked-bench.ts';

/** Per line, counts of flagged cells over all sizes, by flag. */
export type LoudTotals = ReadonlyMap<string, ReadonlyMap<Loud, number>>;

/** Columns scanned at once; the rest follows in slices. */
const AT_ONCE = 8;

export interface BenchScans {
  /** The current scan of one column. */
  readonly of: (column: string) => ColumnScan;
  /** Totals over all columns. Columns not scanned yet follow in slices; `later` is called when all are done. */
  readonly totals: () => LoudTotals;
}

interface State {
  readonly worked: WorkedBench;
  readonly known: Map<string, { readonly revision: number; readonly scan: ColumnScan }>;
  readonly totals: Map<string, Map<Loud, number>>;
  planned: boolean;
}

export function benchScans(worked: WorkedBench, clock: Clock, later: () => void): BenchScans {
  const state: State = { worked, known: new Map(), totals: new Map(), planned: false };
  const goOn = () => {
    for (const column of behindIn(state).slice(0, AT_ONCE)) scanOf(state, column);
    if (behindIn(state).length > 0) {
      clock.soon(goOn);
      return;
    }
    state.planned = false;
    later();
  };
  return {
    of: (column) => scanOf(state, column),
    totals: () => {
      dropGone(state);
      for (const column of behindIn(state).slice(0, AT_ONCE)) scanOf(state, column);
      if (!state.planned && !worked.isBehind() && behindIn(state).length > 0) {
        state.planned = true;
        clock.soon(goOn);
      }
      return state.totals;
    },
  };
}

function scanOf({ worked, known, totals }: State, column: string): ColumnScan {
  if (!worked.isWorked(column)) return noScan;
  const revision = worked.revision(column);
  const last = known.get(column);
  if (last?.revision === revision) return last.scan;
  const scan = scanColumn(worked.bench(), column);
  count(totals, last?.scan ?? noScan, -1);
  count(totals, scan, 1);
  known.set(column, { revision, scan });
  return scan;
}

function behindIn({ worked, known }: State): readonly string[] {
  const keys = worked.source().columns.map((column) => column.key);
  return keys.filter((key) => worked.isWorked(key) && known.get(key)?.revision !== worked.revision(key));
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
