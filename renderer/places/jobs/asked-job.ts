import { readDay } from '#renderer/books/day-field.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { newJob, type JobMade } from '#shared-calc/jobs/new-job.ts';
import { readSizes } from '#shared-calc/jobs/read-sizes.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayJobFault } from '#shared-calc/words/say-job-fault.ts';

/** A first message as it was typed. */
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

/** Makes a job of a first message, or says what of it cannot be read. */
export function askedJob(records: Records, wishes: Wishes, today: Day): Result<JobMade, string> {
  const { sizes: sizesText, handover: dayText, ...words } = wishes;
  const sizes = sizesText.trim() === '' ? ok([]) : readSizes(sizesText, records);
  if (!sizes.ok) return failed(sayJobFault(sizes.fault));
  const handover = dayText.trim() === '' ? ok(undefined) : readDay(dayText, 'Handover wanted', today);
  if (!handover.ok) return handover;
  const made = newJob(records, {
    ...words,
    sizes: sizes.value,
    writings: [],
    by: 'client',
    on: today,
    ...(handover.value !== undefined && { handover: handover.value }),
  });
  return made.ok ? made : failed(sayJobFault(made.fault));
}
