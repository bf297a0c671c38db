import type { Job } from '#shared-calc/records/records.ts';
import type { TodayItem } from './today-item.ts';

/** The first thing to do for each job, of items in order of their days. */
export function firstOfJobs(items: readonly TodayItem[]): ReadonlyMap<string, TodayItem> {
  const first = new Map<string, TodayItem>();
  for (const item of items) if (item.job !== undefined && !first.has(item.job)) first.set(item.job, item);
  return first;
}

/** Only the client can move a job on from these. */
const clientsTurn: readonly Job['state'][] = ['quoted', 'accepted'];

/** What is next for a job: its first item, or whom it waits for. */
export function sayNext({ state, nextAct }: Pick<Job, 'state' | 'nextAct'>, first: TodayItem | undefined): string {
  if (state === 'closed') return '';
  if (first) return first.what;
  return clientsTurn.includes(state) ? 'waits for the client' : nextAct;
}

/** What is to be done, at the beginning of a line. */
export function upperFirst(what: string): string {
  return what.charAt(0).toUpperCase() + what.slice(1);
}
