import { effect, signal, untracked, type ReadonlySignal, type Signal } from '@preact/signals';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { IssuedQuote, Job, Records } from '#shared-calc/records/records.ts';
import { jobSource, quoteSource, type BenchSource } from './bench-source.ts';
import { showBench, type ShownBench } from './bench-view.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';
import { workBench, type WorkedBench } from './worked-bench.ts';

/** What is open on the bench. */
export interface OpenedBench {
  /** The id of a job or of an issued quote. */
  readonly id: string;
  readonly job: string | undefined;
  readonly worked: WorkedBench;
  readonly shown: ShownBench;
}

export interface BenchSession {
  readonly opened: ReadonlySignal<OpenedBench | undefined>;
  readonly open: (id: string | undefined) => void;
  readonly close: () => void;
}

export interface SessionParts {
  readonly book: BookStore;
  readonly clock: Clock;
  readonly display: ReadonlySignal<Display>;
  /** Opens the bench only after the first paint: a view that shows no bench does not wait for it. */
  readonly later?: boolean | undefined;
}

/** Columns computed at once when a job is opened; more are hardly in sight. */
const FIRST_SIGHT = 8;

/** Keeps one bench through all edits of its job. Another job gets another bench. */
export function openBenchSession(parts: SessionParts): BenchSession {
  const { book } = parts;
  const opened = signal<OpenedBench | undefined>(undefined);
  const wanted = signal<string | undefined>(undefined);
  const sourceOf = jobSource();
  const follow = () => {
    const derived = book.derived.value;
    const { records } = derived;
    const id = wanted.value;
    untracked(() => {
      const quote = records.issuedQuote.get(id ?? '');
      if (quote) return openQuote(parts, opened, quote);
      const job = wantedJob(records, id);
      const source = job && sourceOf(derived, job.id);
      return source ? put(parts, opened, { id: job.id, job: job.id, source }) : clear(opened);
    });
  };
  const stop = parts.later ? effectLater(parts.clock, follow) : effect(follow);
  return {
    opened,
    open: (id) => (wanted.value = id),
    close: () => {
      stop();
      clear(opened);
    },
  };
}

/** Returns a function that stops the effect, or cancels its start. */
function effectLater(clock: Clock, follow: () => void): () => void {
  let stop = (): void => undefined;
  let isOff = false;
  clock.soon(() => {
    if (!isOff) stop = effect(follow);
  });
  return () => {
    isOff = true;
    stop();
  };
}

interface NextBench extends Pick<OpenedBench, 'id' | 'job'> {
  readonly source: BenchSource;
}

/** Updates the bench when it is the same job; another job gets a new bench. */
function put(
  { clock, display }: SessionParts,
  opened: Signal<OpenedBench | undefined>,
  { id, job, source }: NextBench,
): void {
  const now = opened.peek();
  if (now?.id === id && now.job === job) {
    now.worked.take(source, now.shown.inSight());
    return;
  }
  const keys = source.columns.slice(0, FIRST_SIGHT).map((column) => column.key);
  const worked = workBench(source, keys, clock);
  opened.value = { id, job, worked, shown: showBench({ worked, display, clock }) };
  now?.worked.close();
}

/** Opens a quote once: it stays as it was issued. */
function openQuote(parts: SessionParts, opened: Signal<OpenedBench | undefined>, quote: IssuedQuote): void {
  const source = opened.peek()?.id === quote.id ? undefined : quoteSource(quote);
  if (source) put(parts, opened, { id: quote.id, job: undefined, source });
}

function clear(opened: Signal<OpenedBench | undefined>): void {
  const now = opened.peek();
  opened.value = undefined;
  now?.worked.close();
}

/** The job with this id; otherwise the first that is not closed, otherwise the last one. */
function wantedJob(records: Pick<Records, 'job'>, id: string | undefined): Job | undefined {
  const found = records.job.get(id ?? '');
  if (found) return found;
  const jobs = [...records.job.values()];
  return jobs.find((job) => job.state !== 'closed') ?? jobs.at(-1);
}
