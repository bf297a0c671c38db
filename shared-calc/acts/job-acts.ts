import { z } from 'zod';
import { dayFault } from '#shared-calc/calendar/day.ts';
import { calledOf } from '#shared-calc/fields/record-fields.ts';
import { copyJob as copiedJob } from '#shared-calc/jobs/copy-job.ts';
import { sellersOf } from '#shared-calc/buy/pack-prices.ts';
import { findJob } from '#shared-calc/jobs/find-job.ts';
import { newJob as madeJob } from '#shared-calc/jobs/new-job.ts';
import { setNextAct as nextActSet } from '#shared-calc/jobs/next-act.ts';
import { choosePacks as packsChosen } from '#shared-calc/jobs/pack-choices.ts';
import { recordDeposit as depositRecorded } from '#shared-calc/jobs/record-deposit.ts';
import { setSizes as sizesSet } from '#shared-calc/jobs/set-sizes.ts';
import { setValues as valuesSet } from '#shared-calc/jobs/set-values.ts';
import { surveyJob as surveyed } from '#shared-calc/jobs/survey-job.ts';
import { recordKinds } from '#shared-calc/records/records.ts';
import { withoutUndefined } from '#shared-calc/records/without-undefined.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { Day } from './inputs.ts';
import { movedAnyway, reasonFields } from './reason.ts';
import { recordChanged, withFields } from './record-changes.ts';

const By = z.enum(['client', 'us']);
const WantedSize = z.strictObject({
  tank: z.string(),
  count: z.int().default(1),
  recipe: z.string().optional().describe('Left out: that of the job, or the one that the size has.'),
});
/** Left out: follow the house again. Empty: a figure that is not known. */
const Text = z
  .string()
  .nullable()
  .describe('As it is typed in the cell; null takes it back to the house, empty is a figure not known yet.');
const Writing = z.strictObject({ column: z.string().optional(), line: z.string(), text: Text });
const words = {
  client: z.string().optional(),
  contact: z.string().optional(),
  site: z.string().optional(),
  access: z.string().optional(),
  audience: z.string().optional(),
  animals: z.string().optional(),
  area: z.string().optional(),
  note: z.string().optional(),
};

const NewJob = z.strictObject({
  title: z.string(),
  recipe: z.string().default('H1'),
  sizes: z.array(WantedSize).default([]),
  writings: z.array(Writing).default([]),
  by: By.default('client'),
  handover: Day.optional(),
  ...words,
});

export const newJob = act<z.infer<typeof NewJob>>({
  name: 'newJob',
  says: 'Makes a job of an enquiry, with its sizes and what the client wants otherwise than the house.',
  input: NewJob,
  run: ({ records, today }, input) => {
    const made = madeJob(records, { ...withoutUndefined(input), writings: writingsOf(input.writings), on: today });
    return made.ok ? ok(made.value.change) : made;
  },
});

const CopyJob = z.strictObject({ job: z.string() });

export const copyJob = act<z.infer<typeof CopyJob>>({
  name: 'copyJob',
  says: 'Makes a new enquiry with the sizes, local values and one-off lines of another job.',
  input: CopyJob,
  run: ({ records, today }, { job }) => {
    const made = copiedJob(records, job, { on: today });
    return made.ok ? ok(made.value.change) : made;
  },
});

const RecordDeposit = z.strictObject({
  job: z.string(),
  coins: z.int().describe('Whole coins: 650.00 is 65000 where the currency has two decimals.'),
  on: Day.optional(),
  ...reasonFields,
});

export const recordDeposit = act<z.infer<typeof RecordDeposit>>({
  name: 'recordDeposit',
  says: 'Records a deposit with its day; a job not so far yet is deposit in with it.',
  input: RecordDeposit,
  run: (derived, { job, coins, on = derived.today, ...reason }) => {
    const change = depositRecorded(derived.records, { job, coins, on });
    return change.ok ? movedAnyway(derived, change.value, reason) : change;
  },
});

const SetValues = z.strictObject({ job: z.string(), writings: z.array(Writing), by: By.default('us') });

export const setValues = act<z.infer<typeof SetValues>>({
  name: 'setValues',
  says: 'Writes cells of a job over, for one size by its column or for the whole job.',
  input: SetValues,
  run: ({ records }, { writings, ...rest }) => valuesSet(records, { ...rest, writings: writingsOf(writings) }),
});

const SetSizes = z.strictObject({ job: z.string(), sizes: z.array(WantedSize) });

export const setSizes = act<z.infer<typeof SetSizes>>({
  name: 'setSizes',
  says: 'Gives a job these sizes in this order; one that stays keeps its local values.',
  input: SetSizes,
  run: ({ records }, { job, sizes }) => sizesSet(records, job, sizes),
});

const WriteSurvey = z.strictObject({
  job: z.string(),
  survey: recordKinds.job.shape.survey.partial().optional().describe('The answers that are new; the others stay.'),
  typed: recordKinds.job.shape.typed.describe('All figures of the survey that are kept as they were typed, by key.'),
  figures: z.array(z.strictObject({ line: z.string(), text: Text })).default([]),
  site: words.site,
  access: words.access,
  audience: words.audience,
  animals: words.animals,
  area: words.area,
  ...reasonFields,
});

export const writeSurvey = act<z.infer<typeof WriteSurvey>>({
  name: 'writeSurvey',
  says: 'Takes a survey in, or any part of it: it holds for the whole job, and with an answer or a figure an enquiry is surveyed.',
  input: WriteSurvey,
  run: (derived, { survey = {}, anyway, who, ...input }) => {
    const change = surveyed(derived.records, {
      ...withoutUndefined(input),
      survey: withoutUndefined(survey),
      figures: writingsOf(input.figures),
    });
    return change.ok ? movedAnyway(derived, change.value, { anyway, who }) : change;
  },
});

const WriteJob = z.strictObject({
  job: z.string(),
  fields: recordKinds.job
    .pick({
      title: true,
      client: true,
      contact: true,
      site: true,
      access: true,
      audience: true,
      animals: true,
      area: true,
      note: true,
      basis: true,
    })
    .extend({
      enquiredOn: Day.nullable(),
      handover: Day.nullable(),
    })
    .partial(),
});

export type JobFields = z.infer<typeof WriteJob>['fields'];

export const writeJob = act<z.infer<typeof WriteJob>>({
  name: 'writeJob',
  says: 'Rewrites what is told of a job; null takes a date away.',
  input: WriteJob,
  run: ({ records }, { job: id, fields }) => {
    const job = findJob(records, id);
    if (!job.ok) return job;
    if (fields.title?.trim() === '') return failed({ kind: 'no-title' });
    const wrong = [fields.enquiredOn, fields.handover].map((day) => day && dayFault(day)).find(Boolean);
    if (wrong) return failed(wrong);
    const to = withFields(job.value, fields);
    return ok(recordChanged(jobLabel(id, fields), 'job', { from: job.value, to }));
  },
});

function jobLabel(id: string, fields: JobFields): string {
  const names = Object.keys(fields);
  if (names.join() === 'basis')
    return `cost of materials of ${id}: ${fields.basis === 'packs' ? 'every pack bought' : 'only what goes in'}`;
  return `${id}: ${names.map((field) => calledOf('job', field).toLowerCase()).join(', ')}`;
}

const SetNextAct = z.strictObject({ job: z.string(), act: z.string().max(2_000), on: Day.optional() });

export const setNextAct = act<z.infer<typeof SetNextAct>>({
  name: 'setNextAct',
  says: 'Sets what is to be done next with a job, by a day where there is one.',
  input: SetNextAct,
  run: ({ records }, { job, act: next, on }) => nextActSet(records, job, next, on),
});

const ChoosePacks = z.strictObject({
  jobs: z.array(z.string()).min(1),
  material: z.string(),
  counts: z
    .record(z.string(), z.int().min(0).max(9_999))
    .nullable()
    .describe('How many of each pack by its id; null: the best.'),
  supplier: z.string().optional().describe('Whose offer is taken; left out: the one that lands for the least.'),
});

export const choosePacks = act<z.infer<typeof ChoosePacks>>({
  name: 'choosePacks',
  says: 'Chooses packs or the supplier of a material by hand for the run over these jobs, or gives the choice up.',
  input: ChoosePacks,
  run: ({ records }, { jobs, material, counts, supplier }) => {
    for (const job of jobs) {
      const found = findJob(records, job);
      if (!found.ok) return found;
    }
    const strange = Object.keys(counts ?? {}).find((pack) => records.pack.get(pack)?.material !== material);
    if (strange !== undefined) return failed({ kind: 'no-record', record: { kind: 'pack', id: strange } });
    if (supplier !== undefined && !sellersOf(records, material).includes(supplier))
      return failed({ kind: 'not-sold-by', material, supplier });
    const of = counts === null ? undefined : new Map(Object.entries(counts));
    return ok(packsChosen(records, { jobs, material, counts: of, supplier }));
  },
});

type TextOr<W> = Omit<W, 'text' | 'column'> & { readonly text: string | undefined; readonly column?: string };

function writingsOf<W extends { readonly text: string | null; readonly column?: string | undefined }>(
  writings: readonly W[],
): readonly TextOr<W>[] {
  return writings.map(({ text, column, ...rest }) => ({
    ...rest,
    text: text ?? undefined,
    ...(column !== undefined && { column }),
  }));
}
