import { effect, signal, untracked, type ReadonlySignal, type Signal } from '@preact/signals';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import type { IssuedQuote, Job, Records } from '#shared-calc/records/records.ts';
import { jobSource, quoteSource, type BenchSource } from './bench-source.ts';
import { showBench, type ShownBench } from './bench-view.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';
import { workBench, type WorkedBench } from './worked-bench.ts';

/** What lies on the bench. */
export interface Laid {
  /** A job's or an issued quote's id. */
  readonly id: string;
  readonly job: string | undefined;
  readonly worked: WorkedBench;
  readonly shown: ShownBench;
}

export interface BenchDesk {
  readonly laid: ReadonlySignal<Laid | undefined>;
  readonly lay: (id: string | undefined) => void;
  readonly close: () => void;
}

export interface DeskParts {
  readonly book: BookStore;
  readonly clock: Clock;
  readonly display: ReadonlySignal<Display>;
  /** Laid down once the page has been painted: a place that shows no bench does not wait for it. */
  readonly later?: boolean | undefined;
}

/** Columns worked at once when a job is laid down: more are hardly in sight. */
const FIRST_SIGHT = 8;

/** Keeps one bench over all edits of its job; another job, another bench. */
export function benchDesk(parts: DeskParts): BenchDesk {
  const { book } = parts;
  const laid = signal<Laid | undefined>(undefined);
  const wanted = signal<string | undefined>(undefined);
  const sourceOf = jobSource();
  const follow = () => {
    const derived = book.derived.value;
    const { records } = derived;
    const id = wanted.value;
    untracked(() => {
      const quote = records.issuedQuote.get(id ?? '');
      if (quote) return layQuote(parts, laid, quote);
      const job = wantedJob(records, id);
      const source = job && sourceOf(derived, job.id);
      return source ? put(parts, laid, { id: job.id, job: job.id, source }) : clear(laid);
    });
  };
  const stop = parts.later ? effectLater(parts.clock, follow) : effect(follow);
  return {
    laid,
    lay: (id) => (wanted.value = id),
    close: () => {
      stop();
      clear(laid);
    },
  };
}

/** Answers how to stop, or never to start. */
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

interface Put extends Pick<Laid, 'id' | 'job'> {
  readonly source: BenchSource;
}

/** The same job takes its changes over; another one comes with a bench of its own. */
function put({ clock, display }: DeskParts, laid: Signal<Laid | undefined>, { id, job, source }: Put): void {
  const now = laid.peek();
  if (now?.id === id && now.job === job) {
    now.worked.take(source, now.shown.inSight());
    return;
  }
  const keys = source.columns.slice(0, FIRST_SIGHT).map((column) => column.key);
  const worked = workBench(source, keys, clock);
  laid.value = { id, job, worked, shown: showBench({ worked, display, clock }) };
  now?.worked.close();
}

/** A quote stays as it was issued, so that it is laid down once. */
function layQuote(parts: DeskParts, laid: Signal<Laid | undefined>, quote: IssuedQuote): void {
  const source = laid.peek()?.id === quote.id ? undefined : quoteSource(quote);
  if (source) put(parts, laid, { id: quote.id, job: undefined, source });
}

function clear(laid: Signal<Laid | undefined>): void {
  const now = laid.peek();
  laid.value = undefined;
  now?.worked.close();
}

/** The job asked for, or the first that is not closed, or the last there is. */
function wantedJob(records: Pick<Records, 'job'>, id: string | undefined): Job | undefined {
  const asked = records.job.get(id ?? '');
  if (asked) return asked;
  const jobs = [...records.job.values()];
  return jobs.find((job) => job.state !== 'closed') ?? jobs.at(-1);
}
