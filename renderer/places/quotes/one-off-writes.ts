import { addRecords, removeRecords, updateRecord } from '#renderer/books/put-record.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { added, type Change } from '#shared-calc/records/change.ts';
import type { QuoteLine, Records } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';

/** The lines that stand on the quote of one job alone. */
export function oneOffsOf({ quoteLine }: Pick<Records, 'quoteLine'>, job: string): readonly QuoteLine[] {
  return [...quoteLine.values()].filter((line) => line.job === job);
}

/** A line for one job alone: a stand, an electrician. Its group gives the margin and the tax class. */
export function addOneOff(records: Records, line: Omit<QuoteLine, 'id'>): Change {
  const id = freeId(`${line.job}-line-${oneOffsOf(records, line.job).length + 1}`, records.quoteLine);
  return addRecords(`${line.job}: ${line.label} on its quote`, [added('quoteLine', { ...line, id })]);
}

export function writeOneOff(from: QuoteLine, fields: Partial<Omit<QuoteLine, 'id' | 'job'>>): Result<Change, string> {
  if (fields.label?.trim() === '') return failed('A line needs its words.');
  return updateRecord(`${from.job}: ${from.label} on its quote`, 'quoteLine', { from, to: { ...from, ...fields } });
}

export function removeOneOff(line: QuoteLine): Change {
  return removeRecords(`${line.job}: ${line.label} off its quote`, [added('quoteLine', line)]);
}
