import { jobName, jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import type { Option } from '#shared-calc/read/read-choice.ts';
import type { Records } from '#shared-calc/records/records.ts';

/** Jobs that goods can be reserved for. */
function openJobs(records: Pick<Records, 'job'>): readonly Option[] {
  const open = jobsInOrder(records).filter(({ state }) => state !== 'closed');
  return open.map((job) => ({ value: job.id, label: jobName(job) }));
}

/** The same jobs after a word for none of them. */
export function jobOptions(records: Pick<Records, 'job'>, none: string): readonly Option[] {
  return [{ value: '', label: none }, ...openJobs(records)];
}
