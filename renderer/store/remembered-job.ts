import { effect, type ReadonlySignal } from '@preact/signals';
import type { BookStore } from './book-store.ts';

type JobStorage = Pick<Storage, 'getItem' | 'setItem'>;

interface OpenJob extends Pick<BookStore, 'records' | 'info'> {
  readonly job: ReadonlySignal<string | undefined>;
  readonly openJob: (job: string) => void;
}

/** Opens the job that was open last, and remembers the open job from then on, for each book separately. */
export function rememberOpenJob(
  { job, openJob, records, info }: OpenJob,
  storage: JobStorage | undefined = storageOf(globalThis),
): () => void {
  const key = () => `loamwright job of ${info.peek().path}`;
  const last = storage?.getItem(key()) ?? '';
  if (records.peek().job.has(last)) openJob(last);
  return effect(() => {
    if (job.value !== undefined) storage?.setItem(key(), job.value);
  });
}

/** A browser may be set to store nothing; then access to its storage throws. Outside a browser there is no storage. */
function storageOf(page: { readonly localStorage?: Storage }): JobStorage | undefined {
  try {
    return page.localStorage;
  } catch {
    return undefined;
  }
}
