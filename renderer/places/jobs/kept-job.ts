import { effect } from '@preact/signals';
import type { MoneyHands } from './money-hands.ts';

type Kept = Pick<Storage, 'getItem' | 'setItem'>;

/** Opens the job that lay open the last time, and keeps which one does from then on; each book has its own. */
export function keepOpenJob(
  { job, openJob, records, info }: Pick<MoneyHands, 'job' | 'openJob' | 'records' | 'info'>,
  storage: Kept | undefined = storageOf(globalThis),
): () => void {
  const key = () => `loamwright job of ${info.peek().path}`;
  const last = storage?.getItem(key()) ?? '';
  if (records.peek().job.has(last)) openJob(last);
  return effect(() => {
    if (job.value !== undefined) storage?.setItem(key(), job.value);
  });
}

/** A browser may be set to keep nothing; then asking for its store throws. Outside a browser there is none. */
function storageOf(page: { readonly localStorage?: Storage }): Kept | undefined {
  try {
    return page.localStorage;
  } catch {
    return undefined;
  }
}
