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
] as const;

export type PreparePartId = (typeof prepareParts)[number]['id'];

export interface PrepareRest {
  /** The job that the link names, if any. */
  readonly job: string | undefined;
  readonly part: PreparePartId;
  /** A size or a batch. */
  readonly of: string | undefined;
}

/** `#/prepare/J02/checks/T07`, `#/prepare/leaves/TB-1`; anything unknown leads to the dates. */
export function readPrepareRest(rest: readonly string[], records: Pick<Records, 'job'>): PrepareRest {
  const [first = ''] = rest;
  const named = records.job.has(first);
  const [word = '', of] = named ? rest.slice(1) : rest;
  const part = prepareParts.find(({ id }) => id === word)?.id ?? 'dates';
  return { job: named ? first : undefined, part, of };
}

export function writePrepare(job: string | undefined, part: PreparePartId, ...of: readonly string[]): string {
  return writeRoute('prepare', ...(job === undefined ? [] : [job]), part, ...of);
}

export interface CardsRest {
  readonly job: string | undefined;
  readonly card: string | undefined;
  /** One item of a card: a batch. */
  readonly one: string | undefined;
}

/** `#/cards/J02/build`, `#/cards/labels/TB-1`; without a card, their list. */
export function readCardsRest(rest: readonly string[], records: Pick<Records, 'job'>): CardsRest {
  const [first = ''] = rest;
  const named = records.job.has(first);
  const [card, one] = named ? rest.slice(1) : rest;
  return { job: named ? first : undefined, card, one };
}

export function writeCards(job: string | undefined, ...of: readonly string[]): string {
  return writeRoute('cards', ...(job === undefined ? [] : [job]), ...of);
}
