import { z } from 'zod';
import { findJob, freeId } from '#shared-calc/jobs/find-job.ts';
import { recordKinds, type QuoteLine } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { findRecord } from './find-record.ts';
import { Coins } from './inputs.ts';
import { recordAdded, recordChanged, recordRemoved, withFields } from './record-changes.ts';

const { shape } = recordKinds.quoteLine;
const fields = { label: shape.label, group: shape.group, costCoins: Coins, by: shape.by };

const AddQuoteLine = z.strictObject({ job: z.string(), ...fields });

export const addQuoteLine = act<z.infer<typeof AddQuoteLine>>({
  name: 'addQuoteLine',
  says: 'Adds a line for one job alone, at cost: a stand, an electrician. Its group gives margin and tax.',
  input: AddQuoteLine,
  run: ({ records }, asked) => {
    const job = findJob(records, asked.job);
    if (!job.ok) return job;
    const label = asked.label.trim();
    if (label === '') return failed({ kind: 'no-words' });
    const nth = [...records.quoteLine.values()].filter((line) => line.job === asked.job).length + 1;
    const id = freeId(`${asked.job}-line-${nth}`, records.quoteLine);
    const line: QuoteLine = { ...asked, id, label };
    return ok(recordAdded(`${asked.job}: ${label} on its quote`, 'quoteLine', line));
  },
});

const ChangeQuoteLine = z.strictObject({ line: z.string(), fields: z.strictObject(fields).partial() });

export const changeQuoteLine = act<z.infer<typeof ChangeQuoteLine>>({
  name: 'changeQuoteLine',
  says: 'Changes a line that stands on the quote of one job alone.',
  input: ChangeQuoteLine,
  run: ({ records }, { line: id, fields: asked }) => {
    const line = findRecord(records, 'quoteLine', id);
    if (!line.ok) return line;
    const { job, label } = line.value;
    const to = withFields(line.value, { ...asked, label: asked.label?.trim() });
    if (to.label === '') return failed({ kind: 'no-words' });
    return ok(recordChanged(`${job}: ${label} on its quote`, 'quoteLine', { from: line.value, to }));
  },
});

const RemoveQuoteLine = z.strictObject({ line: z.string() });

export const removeQuoteLine = act<z.infer<typeof RemoveQuoteLine>>({
  name: 'removeQuoteLine',
  says: 'Takes a line off the quote of one job.',
  input: RemoveQuoteLine,
  run: ({ records }, { line: id }) => {
    const line = findRecord(records, 'quoteLine', id);
    if (!line.ok) return line;
    return ok(recordRemoved(`${line.value.job}: ${line.value.label} off its quote`, 'quoteLine', line.value));
  },
});
