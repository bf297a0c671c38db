import { readText } from './read-text.ts';
import { readCsv, type CsvRow } from '#shared-calc/read/csv-rows.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';

/** A row as it is meant, or why it is not valid. */
export type ReadRow<T> = Result<T, { readonly row: number; readonly says: string }>;

/** Reads a CSV file of the command line row by row. Names every invalid row; then no row is used. */
export function readListFile<T>(
  file: string,
  headings: readonly string[],
  readRow: (row: CsvRow) => ReadRow<T>,
): Result<readonly T[], readonly string[]> {
  const text = readText(file);
  if (text === undefined) return failed([`Cannot read ${file}.`]);
  const { rows, refused } = readCsv(text, headings);
  const read = rows.map(readRow);
  const says = [
    ...refused.map(({ row, fault }) => ({ row, says: sayRowFault(fault) })),
    ...read.flatMap((row) => (row.ok ? [] : [row.fault])),
  ];
  if (says.length > 0) return failed(says.map((row) => `${file}, row ${row.row}: ${row.says}`));
  return ok(read.flatMap((row) => (row.ok ? [row.value] : [])));
}
