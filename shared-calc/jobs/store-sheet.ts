import type { LocalValue, Records } from '#shared-calc/records/records.ts';
import { freeId } from './find-job.ts';
import type { JobSheet, WrittenByLine } from './job-sheet.ts';
import { putRecords } from './put-records.ts';

/** The book with a job's local values replaced by the sheet's; unchanged cells keep their records. */
export function storeLocals(records: Records, job: string, sheet: JobSheet): Records {
  const old = [...records.localValue.values()].filter((each) => each.job === job);
  const next: LocalValue[] = [];
  const taken = new Map(records.localValue);
  const keep = (size: string | undefined, written: WrittenByLine) => {
    for (const [line, box] of written) {
      const known = old.find((each) => each.size === size && each.line === line);
      const id = known?.id ?? freeId(`${size ?? job}.${line}`, taken);
      const value = { id, job, ...(size !== undefined && { size }), line, ...box };
      taken.set(id, value);
      next.push(value);
    }
  };
  keep(undefined, sheet.whole);
  for (const column of sheet.columns) keep(column.size, column.locals);
  const gone = old.map(({ id }) => id).filter((id) => !next.some((each) => each.id === id));
  return { ...records, localValue: putRecords(records.localValue, next, gone) };
}
