import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { JobFault } from './job-fault.ts';

/** `J02 Reading room` */
export function jobName({ id, title }: Pick<Job, 'id' | 'title'>): string {
  return `${id} ${title}`.trim();
}

/** Jobs in order of their numbers. */
export function jobsInOrder({ job }: Pick<Records, 'job'>): readonly Job[] {
  return [...job.values()].toSorted((one, other) => one.id.length - other.id.length || (one.id < other.id ? -1 : 1));
}

export function findJob(records: Pick<Records, 'job'>, id: string): Result<Job, JobFault> {
  const job = records.job.get(id);
  return job ? ok(job) : failed({ kind: 'no-job', job: id, jobs: [...records.job.keys()] });
}

/** J01, J02 ... after the highest there is. A job that fails is closed, never removed, so no id is used twice. */
export function nextJobId(records: Pick<Records, 'job'>): string {
  const numbers = [...records.job.keys()].map((id) => Number(/^J(\d{1,9})$/.exec(id)?.[1] ?? 0));
  return `J${String(Math.max(0, ...numbers) + 1).padStart(2, '0')}`;
}

/** The wanted id, or with `-2`, `-3` ... after it if it is taken. */
export function freeId(wanted: string, taken: { has(id: string): boolean }): string {
  let id = wanted;
  for (let nth = 2; taken.has(id); nth += 1) id = `${wanted}-${nth}`;
  return id;
}
