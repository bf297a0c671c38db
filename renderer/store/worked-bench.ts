import { signal, type ReadonlySignal } from '@preact/signals';
import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import type { Bench, LiveBench } from '#shared-calc/bench/open-bench.ts';
import { knownSums, type KnownSums, type OrderFault, type Pricing } from '#shared-calc/bench/order-sums.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Result } from '#shared-calc/result.ts';
import type { BenchSource } from './bench-source.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import { loadGraphBench, openLoadedBench } from './bench-engine.ts';
import type { Clock } from './clock.ts';
import { columnBefore, wholeGross, type ColumnBefore } from './column-before.ts';
import { hasMoreAfterSlice } from './slice.ts';

/** This many columns can be computed at once without a visible delay. */
const AT_ONCE = 8;

/** One bench for all edits: columns in sight are computed at once, the rest in slices. */
export interface WorkedBench {
  /** Increases whenever a figure may have changed. */
  readonly version: ReadonlySignal<number>;
  readonly source: () => BenchSource;
  readonly bench: () => Bench;
  readonly take: (next: BenchSource, inSight: readonly string[]) => void;
  /** A new number whenever a cell of the column may have changed. */
  readonly revision: (column: string) => number;
  /** Its cells can be read. */
  readonly isWorked: (column: string) => boolean;
  /** It still waits for its slice; without a column, whether any does. */
  readonly isBehind: (column?: string) => boolean;
  readonly sums: (column: string) => Result<KnownSums, OrderFault>;
  /** What the sizes of the last edit came to before it, those in sight or a few; another object with each edit. */
  readonly before: () => ReadonlyMap<string, ColumnBefore>;
  /** Nothing can be read any more. */
  readonly isClosed: () => boolean;
  readonly close: () => void;
}

interface Sums {
  readonly revision: number;
  readonly pricing: Pricing;
  readonly sums: Result<KnownSums, OrderFault>;
}

interface State {
  source: BenchSource;
  /** Columns that wait for their slice. */
  readonly behind: Set<string>;
  readonly worked: Set<string>;
  readonly revisions: Map<string, number>;
  readonly inputs: Map<string, { readonly from: BenchColumn; readonly input: ColumnInput }>;
  readonly sums: Map<string, Sums>;
  before: ReadonlyMap<string, ColumnBefore>;
  turn: number;
  /** The last revision given to a column. */
  revision: number;
}

/** The incremental engine is loaded this long after the bench is first shown. */
const LOAD_AFTER_MS = 300;

export function workBench(source: BenchSource, inSight: readonly string[], clock: Clock): WorkedBench {
  const version = signal(0);
  const loaded = openLoadedBench({ ...inputOf(source, []), lines: [] });
  let { bench } = loaded;
  const state = openState(source);
  let seen = inSight;
  let isClosed = false;
  const turnOn = () => (version.value = version.peek() + 1);
  const work = (next: BenchSource) => {
    const more = update(bench, state, next, seen);
    turnOn();
    if (state.behind.size > 0) workSlices(state, clock, more, turnOn);
  };
  work(source);
  const follow = (graph: LiveBench) => {
    const now = state.source;
    bench = graph;
    forget(state, []);
    state.source = { ...now, lines: [], columns: [] };
    work(now);
  };
  const stopLoading = loaded.isGraph ? undefined : whenGraphLoaded(clock, () => inputOf(state.source, []), follow);
  return {
    version,
    source: () => state.source,
    bench: () => bench,
    take: (next, nowSeen) => {
      if (next === state.source) return;
      seen = nowSeen;
      work(next);
    },
    revision: (column) => state.revisions.get(column) ?? 0,
    isWorked: (column) => state.worked.has(column),
    isBehind: (column) => (column === undefined ? state.behind.size > 0 : state.behind.has(column)),
    sums: (column) => sumsOf(bench, state, column),
    before: () => state.before,
    isClosed: () => isClosed,
    close: () => {
      isClosed = true;
      stopLoading?.();
      state.turn += 1;
      bench.close();
    },
  };
}

/** Returns a function that cancels it. */
function whenGraphLoaded(clock: Clock, input: () => BenchInput, follow: (bench: LiveBench) => void): () => void {
  let isOff = false;
  const stop = clock.after(LOAD_AFTER_MS, () => {
    void loadGraphBench().then((open) => {
      if (!isOff) follow(open({ ...input(), lines: [] }));
    });
  });
  return () => {
    isOff = true;
    stop();
  };
}

function openState(source: BenchSource): State {
  return {
    source: { ...source, lines: [], columns: [] },
    behind: new Set(),
    worked: new Set(),
    revisions: new Map(),
    inputs: new Map(),
    sums: new Map(),
    before: new Map(),
    turn: 0,
    revision: 0,
  };
}

function update(bench: LiveBench, state: State, next: BenchSource, inSight: readonly string[]): () => boolean {
  const { source: before, worked, behind } = state;
  const all = next.lines !== before.lines || next.job !== before.job || next.isOldPrice !== before.isOldPrice;
  const old = new Map(bench.input().columns.map((column) => [column.key, column]));
  const columns = next.columns.map((column) => inputFor(state, column));
  const changed = columns.filter((column) => all || behind.has(column.key) || old.get(column.key) !== column);
  const first = new Set([...inSight, ...(changed.length <= AT_ONCE ? changed.map((column) => column.key) : [])]);
  state.before = beforeEdit(
    bench,
    state,
    changed.filter(({ key }) => first.has(key)),
  );
  const more = bench.update(inputOf(next, columns), [...first]);
  state.source = next;
  behind.clear();
  for (const { key } of changed) {
    bump(state, key);
    if (first.has(key)) worked.add(key);
    else behind.add(key);
  }
  forget(state, next.columns);
  return more;
}

/** What sizes come to that are worked and about to change. A price that nobody has read yet is not worked for it. */
function beforeEdit(bench: Bench, state: State, columns: readonly ColumnInput[]): State['before'] {
  const ready = columns.filter(({ key }) => state.worked.has(key) && !state.behind.has(key));
  return new Map(
    ready.map(({ key }) => {
      const known = state.sums.get(key);
      const isNew = known?.revision === state.revisions.get(key) && known?.pricing === state.source.pricing;
      return [key, columnBefore(bench, key, isNew && known ? wholeGross(known.sums) : undefined)];
    }),
  );
}

/**
 * A column that is still stale when the next edit comes gets an input object of its own. Otherwise the bench would
 * treat it as already computed.
 */
function inputFor({ inputs, behind }: State, from: BenchColumn): ColumnInput {
  const known = inputs.get(from.size);
  if (known?.from === from && !behind.has(from.key)) return known.input;
  const input = behind.has(from.key) ? { ...from, locals: new Map(from.locals) } : from;
  inputs.set(from.size, { from, input });
  return input;
}

function inputOf(source: BenchSource, columns: readonly ColumnInput[]): BenchInput {
  const { lines, job, isOldPrice } = source;
  return { lines, columns, job, isOldPrice };
}

function forget({ worked, revisions, sums, inputs }: State, columns: readonly BenchColumn[]): void {
  const keys = new Set(columns.map(({ key }) => key));
  for (const key of revisions.keys()) {
    if (keys.has(key)) continue;
    worked.delete(key);
    sums.delete(key);
    revisions.delete(key);
  }
  const sizes = new Set(columns.map(({ size }) => size));
  for (const size of inputs.keys()) if (!sizes.has(size)) inputs.delete(size);
}

/** Revisions count over all columns, so that a column that returns under the same key never repeats a number. */
function bump(state: State, key: string): void {
  state.revision += 1;
  state.revisions.set(key, state.revision);
}

function workSlices(state: State, clock: Clock, more: () => boolean, done: () => void): void {
  state.turn += 1;
  const { turn } = state;
  const slice = () => {
    if (state.turn !== turn) return;
    if (hasMoreAfterSlice(more, clock)) {
      clock.soon(slice);
      return;
    }
    for (const key of state.behind) {
      state.worked.add(key);
      bump(state, key);
    }
    state.behind.clear();
    done();
  };
  clock.soon(slice);
}

function sumsOf(bench: Bench, state: State, column: string): Result<KnownSums, OrderFault> {
  const { pricing } = state.source;
  const revision = state.revisions.get(column) ?? 0;
  const known = state.sums.get(column);
  if (known?.revision === revision && known.pricing === pricing) return known.sums;
  const sums = knownSums(bench, [column], pricing);
  state.sums.set(column, { revision, pricing, sums });
  return sums;
}
