import { keepOpenJob } from './kept-job.ts';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { PageStore } from './page-store.ts';
import type { BookStore } from './book-store.ts';
import type { Job } from '#shared-calc/records/records.ts';

/** What the places of the money side need of the store. */
export interface MoneyHands extends Pick<
  BookStore,
  'records' | 'derived' | 'info' | 'doAct' | 'issue' | 'say' | 'refuse'
> {
  /** The job that lies open, on every place alike. */
  readonly job: ReadonlySignal<string | undefined>;
  readonly openJob: (job: string) => void;
}

const made = new WeakMap<PageStore, MoneyHands>();

/**
 * The hands over the page's store, the same for every place: the open job is the one on the size bench, or that of
 * the quote there. It is kept on this machine for the next time.
 */
export function moneyHands(store: PageStore): MoneyHands {
  const before = made.get(store);
  if (before) return before;
  const { book, bench } = store;
  const job = computed(() => {
    const opened = bench.opened.value;
    return opened?.job ?? book.records.value.issuedQuote.get(opened?.id ?? '')?.job;
  });
  const hands = { ...book, job, openJob: bench.open };
  keepOpenJob(hands);
  made.set(store, hands);
  return hands;
}

/** The job that lies open, where the book has it. */
export function jobAtHand({ records, job }: Pick<MoneyHands, 'records' | 'job'>): Job | undefined {
  return records.value.job.get(job.value ?? '');
}
