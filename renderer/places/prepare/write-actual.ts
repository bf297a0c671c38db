import { removeRecords, updateRecord } from '#renderer/books/put-record.ts';
import { readMeasure } from '#shared-calc/papers/read-measure.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { added, emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Actual, Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import type { TookRow } from '#shared-calc/derive/job-took.ts';

interface Writing {
  readonly job: string;
  readonly text: string;
  readonly on: Day;
  readonly decimalComma: boolean;
}

/** What a job took, written down, over, or (empty) taken back. */
export function writeActual(records: Pick<Records, 'actual'>, row: TookRow, writing: Writing): Result<Change, string> {
  const { job, text, on, decimalComma } = writing;
  const read = readMeasure(
    text,
    { name: row.label, stored: row.unit, low: 0, high: 1_000_000, mayBeEmpty: true },
    { decimalComma },
  );
  if (!read.ok) return read;
  const label = `${job}: ${row.label.toLowerCase()}`;
  if (read.value === undefined) {
    return ok(
      row.actual ? removeRecords(`${label} not written down`, [added('actual', row.actual)]) : emptyChange(label),
    );
  }
  const took = `${label} took ${read.value} ${row.unit}`;
  if (row.actual)
    return updateRecord(took, 'actual', {
      from: row.actual,
      to: { ...row.actual, value: read.value, unit: row.unit, on },
    });
  const record: Actual = {
    id: freeActualId(records, `${job}.${row.line}`),
    job,
    line: row.line,
    value: read.value,
    unit: row.unit,
    on,
    note: '',
  };
  return ok({ ...emptyChange(took), added: [added('actual', record)] });
}

function freeActualId({ actual }: Pick<Records, 'actual'>, wanted: string): string {
  let id = wanted;
  for (let nth = 2; actual.has(id); nth += 1) id = `${wanted}-${nth}`;
  return id;
}
