import { jobName, jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import type { Records } from '#shared-calc/records/records.ts';

interface JobOption {
  readonly value: string;
  readonly label: string;
}

/** Jobs that goods can be reserved for, after a word for none of them. */
export function jobOptions(records: Pick<Records, 'job'>, none: string): readonly JobOption[] {
  const open = jobsInOrder(records).filter(({ state }) => state !== 'closed');
  return [{ value: '', label: none }, ...open.map((job) => ({ value: job.id, label: jobName(job) }))];
}
