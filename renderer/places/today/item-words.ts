import { jobName } from '#shared-calc/jobs/find-job.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import type { Records } from '#shared-calc/records/records.ts';

/** For whom something is done: a job, or the workshop. */
export function whomOf({ job: id, tub }: TodayItem, { job: jobs }: Pick<Records, 'job'>): string {
  const job = jobs.get(id ?? '');
  if (job) return jobName(job);
  return tub === undefined ? 'The workshop' : 'Back room';
}

/** A rate by its name; one that is not in the book by its code. */
export function whoLabel(who: string, { rate }: Pick<Records, 'rate'>): string {
  return rate.get(who)?.label ?? who;
}
