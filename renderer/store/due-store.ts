import { signal } from '@preact/signals';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { lackedBy, startList, type StartEntry } from '#shared-calc/derive/start-list.ts';
import { openDue } from '#shared-calc/derive/today.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import type { BookStore } from './book-store.ts';
import type { Clock } from './clock.ts';
import { hasMoreAfterSlice } from './slice.ts';

/** What is to be done, over all jobs and the workshop. */
export interface DueNow {
  readonly items: readonly TodayItem[];
  /** What is missing for a first quote, or for one of an open job. */
  readonly start: readonly StartEntry[];
  /** Jobs changed since: their items are still being worked. */
  readonly isBehind: boolean;
}

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
    const left = [...jobs];
    const now = due(of);
    const oneJob = () => {
      const job = left.shift();
      if (job === undefined) return false;
      now.ofJob(job);
      lackedBy(of, job);
      return true;
    };
    if (hasMoreAfterSlice(oneJob, clock)) {
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
