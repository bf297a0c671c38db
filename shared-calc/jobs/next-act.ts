import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { dayFault } from '#shared-calc/calendar/day.ts';
import { findJob } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { putRecords } from './put-records.ts';

const acts: Readonly<Record<Job['state'], string>> = {
  enquiry: 'Survey the site',
  surveyed: 'Issue the quote',
  quoted: 'Ask for the answer',
  accepted: 'Take the deposit',
  'deposit in': 'Order on the next shopping run',
  ordered: 'Take the goods in',
  'in quarantine': 'Look the plants over and clear them',
  'ready to build': 'Build',
  built: 'Watch temperature and humidity',
  watching: 'Sign the readings and hand over',
  'handed over': 'Call a week after the handover',
  'in service': 'Make the next visit',
  closed: '',
};

/** The next act of a job in a state; empty for a closed job. */
export function nextActOf(state: Job['state']): string {
  return acts[state];
}

/** A job in a new state, with its next act; the day of the previous act is cleared. */
export function arrived(job: Job, state: Job['state']): Job {
  const { nextOn: _, ...rest } = job;
  return { ...rest, state, nextAct: nextActOf(state) };
}

/** Sets the next act in the builder's own words, with an optional day. */
export function setNextAct(records: Records, id: string, act: string, on?: string): Result<Change, JobFault> {
  const job = findJob(records, id);
  if (!job.ok) return job;
  const wrong = on === undefined ? undefined : dayFault(on);
  if (wrong) return failed(wrong);
  const { nextOn: _, ...rest } = job.value;
  const next = { ...rest, nextAct: act, ...(on !== undefined && { nextOn: on }) };
  return ok(diffRecords(`${id}: next, ${act}`, records, { ...records, job: putRecords(records.job, [next]) }));
}
