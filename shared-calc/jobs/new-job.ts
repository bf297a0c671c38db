import { dayFault, type Day } from '#shared-calc/calendar/day.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { unasked } from '#shared-calc/fields/survey.ts';
import type { Job, LocalValue, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nextJobId } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { jobSheet } from './job-sheets.ts';
import { nextActOf } from './next-act.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { putRecords } from './put-records.ts';
import type { WantedSize } from './read-sizes.ts';
import type { Writing } from './read-writing.ts';
import { setSizes } from './set-sizes.ts';
import { storeLocals } from './store-sheet.ts';
import { writeOver } from './write-over.ts';

type JobTexts = Pick<Job, 'client' | 'contact' | 'site' | 'access' | 'audience' | 'animals' | 'area' | 'note'>;

/** The content of an enquiry; unknown fields are left empty. */
export interface NewJob extends Partial<JobTexts> {
  readonly title: string;
  readonly recipe: string;
  readonly sizes: readonly WantedSize[];
  readonly writings: readonly Writing[];
  readonly by: LocalValue['by'];
  readonly handover?: Day;
  readonly on: Day;
}

export interface JobMade {
  readonly job: string;
  readonly change: Change;
}

const untold: JobTexts = {
  client: '',
  contact: '',
  site: '',
  access: '',
  audience: '',
  animals: '',
  area: '',
  note: '',
};

/** Makes a job of an enquiry, with its sizes and the client's deviations from the house. */
export function newJob(records: Records, asked: NewJob): Result<JobMade, JobFault> {
  const { title, recipe, sizes, writings, by, handover, on, ...told } = asked;
  const fault = faultOf(records, asked);
  if (fault) return failed(fault);
  const job: Job = {
    ...untold,
    ...told,
    id: nextJobId(records),
    title: title.trim(),
    recipe,
    state: 'enquiry',
    enquiredOn: on,
    ...(handover !== undefined && { handover }),
    basis: 'used',
    survey: unasked,
    nextAct: nextActOf('enquiry'),
  };
  const bare = { ...records, job: putRecords(records.job, [job]) };
  const sized = setSizes(bare, job.id, sizes);
  if (!sized.ok) return sized;
  const withSizes = applyChange(bare, sized.value);
  const sheet = writeOver(jobSheet(withSizes, job), writings, {
    lines: linesOf(records, recipe),
    by,
    decimalComma: workshopOf(records).decimalComma,
  });
  if (!sheet.ok) return sheet;
  const label = `${job.id}: new job, ${job.title}`;
  return ok({ job: job.id, change: diffRecords(label, records, storeLocals(withSizes, job.id, sheet.value)) });
}

function faultOf(records: Records, { title, recipe, handover, on }: NewJob): JobFault | undefined {
  if (title.trim() === '') return { kind: 'no-title' };
  if (!records.recipe.has(recipe)) return { kind: 'no-recipe', recipe, recipes: [...records.recipe.keys()] };
  return dayFault(on) ?? (handover === undefined ? undefined : dayFault(handover));
}
