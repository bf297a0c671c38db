import type { ActInputs } from '#shared-calc/acts/all-acts.ts';
import { readDay, type DayReading } from '#shared-calc/read/read-day.ts';
import { readSizes } from '#shared-calc/jobs/read-sizes.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { calledOf } from '#shared-calc/fields/record-fields.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** A client's first message, as typed. */
export interface Wishes {
  readonly title: string;
  readonly client: string;
  readonly contact: string;
  readonly recipe: string;
  readonly sizes: string;
  readonly animals: string;
  readonly audience: string;
  readonly handover: string;
}

export const noWishes: Wishes = {
  title: '',
  client: '',
  contact: '',
  recipe: '',
  sizes: '',
  animals: '',
  audience: '',
  handover: '',
};

/** A first message as the act's input, or what cannot be parsed. */
export function typedJob(
  records: Pick<Records, 'tank' | 'recipe'>,
  { sizes: sizesText, handover: dayText, ...words }: Wishes,
  reading: DayReading,
): Result<ActInputs['newJob'], string> {
  const sizes = sizesText.trim() === '' ? ok([]) : readSizes(sizesText, records);
  if (!sizes.ok) return failed(sayJobFault(sizes.fault));
  const handover = dayText.trim() === '' ? ok(undefined) : said(readDay(dayText, calledOf('job', 'handover'), reading));
  if (!handover.ok) return handover;
  return ok({ ...words, sizes: [...sizes.value], writings: [], by: 'client', handover: handover.value });
}
