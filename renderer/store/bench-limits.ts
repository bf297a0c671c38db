import type { ReadonlySignal } from '@preact/signals';
import type { PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import { placedSizeOn, type PlacedSize } from '#shared-calc/jobs/placed-size.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import type { WorkedBench } from './worked-bench.ts';

/** The limits of the place for the sizes of a bench. They hang on every size together, so any edit may move them. */
export interface BenchLimits {
  /** For one size, as last worked; the same list while it says the same. Those of a few sizes are worked at once. */
  readonly of: (column: string) => readonly PlaceCheck[];
  /** Whether a size waits for its limits, and they can be worked. */
  readonly isBehind: () => boolean;
  /** Reads or works some sizes of those that wait. */
  readonly work: () => void;
}

/** So many sizes are read, or their limits worked, without a visible delay. */
const AT_ONCE = 8;

const none: readonly PlaceCheck[] = [];

interface State {
  readonly worked: WorkedBench;
  readonly last: Map<string, readonly PlaceCheck[]>;
  /** What each size comes to at its place, by its revision. */
  readonly sizes: Map<string, { readonly revision: number; readonly size: PlacedSize }>;
  /** What the list of `waiting` was made for. */
  stamp: readonly unknown[];
  waiting: Set<string>;
  place: (column: string) => readonly PlaceCheck[];
}

export function benchLimits(worked: WorkedBench, display: ReadonlySignal<Display>): BenchLimits {
  const state: State = { worked, last: new Map(), sizes: new Map(), stamp: [], waiting: new Set(), place: () => none };
  const follow = () => followBench(state, display.peek());
  return {
    of: (column) => {
      follow();
      if (!worked.isBehind() && worked.source().columns.length <= AT_ONCE) workOne(state, column);
      return state.last.get(column) ?? none;
    },
    isBehind: () => {
      follow();
      return state.waiting.size > 0 && !worked.isBehind();
    },
    work: () => {
      follow();
      const unread = worked.source().columns.filter((column) => !isRead(state, column));
      for (const column of unread.slice(0, AT_ONCE)) readSize(state, column);
      if (unread.length > 0) return;
      for (const column of [...state.waiting].slice(0, AT_ONCE)) workOne(state, column);
    },
  };
}

/** After any change every size waits; what is known of each stays until it is worked again. */
function followBench(state: State, display: Display): void {
  const { worked } = state;
  const source = worked.source();
  const stamp = [source, worked.version.peek(), display];
  if (stamp.every((each, at) => each === state.stamp[at])) return;
  state.stamp = stamp;
  state.place = source.placeOn(worked.bench(), display, () => source.columns.map((column) => readSize(state, column)));
  state.waiting = new Set(source.columns.map(({ key }) => key));
  for (const key of state.last.keys()) {
    if (state.waiting.has(key)) continue;
    state.last.delete(key);
    state.sizes.delete(key);
  }
}

function isRead({ worked, sizes }: State, { key }: BenchColumn): boolean {
  return sizes.get(key)?.revision === worked.revision(key);
}

function readSize({ worked, sizes }: State, column: BenchColumn): PlacedSize {
  const revision = worked.revision(column.key);
  const known = sizes.get(column.key);
  if (known?.revision === revision) return known.size;
  const size = placedSizeOn(worked.bench(), column);
  sizes.set(column.key, { revision, size });
  return size;
}

function workOne({ waiting, last, place }: State, column: string): void {
  if (!waiting.delete(column)) return;
  const made = place(column);
  if (!sameData(last.get(column), made)) last.set(column, made);
}
