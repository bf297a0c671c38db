import { rememberOpenJob } from './remembered-job.ts';
import { computed, type ReadonlySignal } from '@preact/signals';
import type { PageStore } from './page-store.ts';
import type { BookStore } from './book-store.ts';
import type { EditHouse } from './house-ask.ts';
import { dueStore, type DueNow } from './due-store.ts';
import type { Job } from '#shared-calc/records/records.ts';

/** What the job views need of the store. */
export interface JobApi extends Pick<BookStore, 'records' | 'derived' | 'info' | 'doAct' | 'issue' | 'say' | 'refuse'> {
  /** The open job, the same in every view. */
  readonly job: ReadonlySignal<string | undefined>;
  readonly openJob: (job: string) => void;
  readonly due: () => DueNow;
  readonly editHouse: EditHouse;
}

const made = new WeakMap<PageStore, JobApi>();

/**
 * The page store with the open job: the one on the size bench, or the job of the quote there. This machine
 * remembers the open job for the next start.
 */
export function jobApi(store: PageStore): JobApi {
  const before = made.get(store);
  if (before) return before;
  const { book, bench, clock, house } = store;
  const job = computed(() => {
    const opened = bench.opened.value;
    return opened?.job ?? book.records.value.issuedQuote.get(opened?.id ?? '')?.job;
  });
  const api = { ...book, job, openJob: bench.open, due: dueStore(book, clock), editHouse: house.edit };
  rememberOpenJob(api);
  made.set(store, api);
  return api;
}

/** The open job, if the book has it. */
export function jobAtHand({ records, job }: Pick<JobApi, 'records' | 'job'>): Job | undefined {
  return records.value.job.get(job.value ?? '');
}
