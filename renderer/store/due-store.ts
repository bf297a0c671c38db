import { signal } from '@preact/signals';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { lackedBy, startList, type StartEntry } from '#shared-calc/derive/start-list.ts';
import { openDue } from '#shared-calc/derive/today.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';

/** What is to be done, over all jobs and the workshop. */
export interface DueNow {
  readonly items: readonly TodayItem[];
  /** What is missing for a first quote, or for one of an open job. */
  readonly start: readonly StartEntry[];
  /** Jobs changed since: their items are still being worked. */
  readonly isBehind: boolean;
}

/** Time for jobs in one slice, ms. */
const SLICE = 8;

/**
 * What is to be done on the day of the derivation, worked job by job in slices, so that a book of many jobs never stops
 * the page. Call it within a component: it follows the book while the component is there, and works nothing otherwise.
 */
export function dueStore({ derived }: Pick<BookStore, 'derived'>, clock: Clock): () => DueNow {
  const worked = signal<(Omit<DueNow, 'isBehind'> & { readonly of: Derived }) | undefined>(undefined);
  const due = openDue();
  let working: Derived | undefined;
  const goOn = (of: Derived, jobs: readonly string[]) => {
    if (of !== working) return;
    const end = clock.now().getTime() + SLICE;
    const left = [...jobs];
    const now = due(of);
    while (left.length > 0 && clock.now().getTime() < end) {
      const job = left.shift() ?? '';
      now.ofJob(job);
      lackedBy(of, job);
    }
    if (left.length > 0) {
      clock.soon(() => goOn(of, left));
      return;
    }
    working = undefined;
    worked.value = { of, items: now.all(), start: startList(of) };
  };
  return () => {
    const now = derived.value;
    const last = worked.value;
    if (last?.of === now) return { items: last.items, start: last.start, isBehind: false };
    if (working !== now) {
      working = now;
      clock.soon(() => goOn(now, [...now.records.job.keys()]));
    }
    return { items: last?.items ?? [], start: last?.start ?? [], isBehind: true };
  };
}
