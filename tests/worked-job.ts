import { derive, type DerivedJob } from '#shared-calc/derive/derived.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';

/** A job of a book, computed as of a day. */
export function workedJob(records: Records, { id }: Pick<Job, 'id'>, on: Day): DerivedJob {
  const job = derive(records, on).job(id);
  if (!job) throw new Error(`no job ${id}`);
  return job;
}
