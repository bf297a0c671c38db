import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { LocalValue, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { findJob } from './find-job.ts';
import type { JobFault } from './job-fault.ts';
import { openJobSheets } from './job-sheets.ts';
import type { Writing } from './read-writing.ts';
import { storeLocals } from './store-sheet.ts';
import { writeOver } from './write-over.ts';

/** Cells to write over in a job, and who wants it. */
export interface ValuesSet {
  readonly job: string;
  readonly writings: readonly Writing[];
  readonly by: LocalValue['by'];
}

/** Writes cells of a job over, for one size or for all of it; empty if nothing differs. */
export function setValues(records: Records, { job: id, writings, by }: ValuesSet): Result<Change, JobFault> {
  const job = findJob(records, id);
  if (!job.ok) return job;
  const sheets = openJobSheets()(records);
  const { decimalComma } = workshopOf(records);
  const sheet = writeOver(sheets.sheet(job.value), writings, {
    lines: sheets.linesOf(job.value),
    by,
    decimalComma,
  });
  if (!sheet.ok) return sheet;
  const said = writings.map(({ column, line, text }) => {
    const where = column === undefined ? line : `${line} of ${column}`;
    return text === undefined ? `${where} back to the house` : `${where} to ${text === '' ? 'no figure' : text}`;
  });
  const label = `${id}: ${said.join(', ')}`.slice(0, LABEL_LENGTH);
  return ok(diffRecords(label, records, storeLocals(records, id, sheet.value)));
}

const LABEL_LENGTH = 300;
