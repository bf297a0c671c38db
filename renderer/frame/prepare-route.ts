import { writeRoute } from './place-route.ts';
import type { Records } from '#shared-calc/records/records.ts';

/** Parts of the prep plan view, in the order of the work. */
export const prepareParts = [
  { id: 'dates', title: 'Dates of the job' },
  { id: 'jobs', title: 'All jobs' },
  { id: 'checks', title: 'Sheet of checks' },
  { id: 'leaves', title: 'Leaf treatment' },
  { id: 'watch', title: 'Watch' },
  { id: 'took', title: 'What it took' },
  { id: 'cards', title: 'Cards' },
] as const;

export type PreparePartId = (typeof prepareParts)[number]['id'];

export interface PrepareRest {
  /** The job that the link names, if any. */
  readonly job: string | undefined;
  readonly part: PreparePartId;
  /** A size, a batch, a card. */
  readonly of: string | undefined;
  /** One item of a card: a batch. */
  readonly one: string | undefined;
}

/** `#/prepare/J02/checks/T07`, `#/prepare/leaves/TB-1`; anything unknown leads to the dates. */
export function readPrepareRest(rest: readonly string[], records: Pick<Records, 'job'>): PrepareRest {
  const [first = ''] = rest;
  const named = records.job.has(first);
  const [word = '', of, one] = named ? rest.slice(1) : rest;
  const part = prepareParts.find(({ id }) => id === word)?.id ?? 'dates';
  return { job: named ? first : undefined, part, of, one };
}

export function writePrepare(job: string | undefined, part: PreparePartId, ...of: readonly string[]): string {
  return writeRoute('prepare', ...(job === undefined ? [] : [job]), part, ...of);
}
