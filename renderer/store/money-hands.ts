import { keepOpenJob } from './kept-job.ts';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { PageStore } from './page-store.ts';
import type { BookStore } from './book-store.ts';
import type { JobFault } from '#shared-calc/jobs/job-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';

/** What the places of the money side need of the store. */
export interface MoneyHands extends Pick<
  BookStore,
  'records' | 'info' | 'apply' | 'act' | 'doAct' | 'issue' | 'say' | 'refuse'
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
    const laid = bench.laid.value;
    return laid?.job ?? book.records.value.issuedQuote.get(laid?.id ?? '')?.job;
  });
  const hands = { ...book, job, openJob: bench.lay };
  keepOpenJob(hands);
  made.set(store, hands);
  return hands;
}

/** The job that lies open, where the book has it. */
export function jobAtHand({ records, job }: Pick<MoneyHands, 'records' | 'job'>): Job | undefined {
  return records.value.job.get(job.value ?? '');
}

/** `J02 Reading room` */
export function jobName({ id, title }: Pick<Job, 'id' | 'title'>): string {
  return `${id} ${title}`.trim();
}

/** An act on a job with its refusal in words. */
export function told(done: Result<Change, JobFault>): Result<Change, string> {
  return done.ok ? done : failed(sayJobFault(done.fault));
}

/** Jobs in order of their numbers. */
export function jobsInOrder({ job }: Pick<Records, 'job'>): readonly Job[] {
  return [...job.values()].toSorted((one, other) => one.id.length - other.id.length || (one.id < other.id ? -1 : 1));
}
