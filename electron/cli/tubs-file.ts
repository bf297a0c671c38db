import { parseDay } from '#shared-calc/calendar/day.ts';
import type { TubFacts } from '#shared-calc/prepare/standing-tub.ts';
import type { CsvRow } from '#shared-calc/read/csv-rows.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { readListFile, type ReadRow } from './list-file.ts';

/** A tub of a list, with the code of its kind. */
export type ListedTub = TubFacts & { readonly kind: string };

/** Reads `--tubs FILE.csv`: rows of kind, started, founders, degC. Names every invalid row; then no row is used. */
export function readTubsFile(file: string, records: Records): Result<readonly ListedTub[], readonly string[]> {
  return readListFile(file, ['kind', 'started', 'founders'], (row) => readTub(row, records));
}

function readTub({ row, fields }: CsvRow, records: Records): ReadRow<ListedTub> {
  const { kind = '', started = '', founders = '', degc: degC = '' } = fields;
  const day = parseDay(started);
  if (!day.ok) return failed({ row, says: `"${started}" is not a day; write it as 2027-06-28.` });
  if (!records.cultureKind.has(kind)) {
    return failed({ row, says: `No culture kind called ${kind}.${didYouMean(kind, records.cultureKind.keys())}` });
  }
  const wrong = figureFault(founders, degC);
  if (wrong !== undefined) return failed({ row, says: wrong });
  const id = `row ${row}`;
  return ok({ id, kind, startedOn: day.value, founders: Number(founders), ...(degC !== '' && { degC: Number(degC) }) });
}

function figureFault(founders: string, degC: string): string | undefined {
  if (!/^[1-9]\d{0,7}$/.test(founders)) return `Founders "${founders}" is not a whole count, as 1250.`;
  if (degC === '' || /^-?\d{1,2}(?:\.\d+)?$/.test(degC)) return undefined;
  return `"${degC}" is not a temperature in degC, as 21.`;
}
