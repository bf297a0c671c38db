import { readFileSync } from 'node:fs';
import { parseDay, type Day } from '#shared-calc/calendar/day.ts';
import { readCsv, type CsvRow } from '#shared-calc/read/csv-rows.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sayRowFault } from '#shared-calc/words/say-row-fault.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';

export interface DatedBuild {
  readonly date: Day;
  readonly tank: string;
  readonly count: number;
}

const MOST_BUILDS = 999;

/** Reads `--builds FILE.csv`: rows of date, tank, count. Names every invalid row; then no row is used. */
export function readBuildsFile(file: string, records: Records): Result<readonly DatedBuild[], readonly string[]> {
  const text = readText(file);
  if (text === undefined) return failed([`Cannot read ${file}.`]);
  const { rows, refused } = readCsv(text, ['date', 'tank', 'count']);
  const read = rows.map((row) => readBuild(row, records));
  const says = [
    ...refused.map(({ row, fault }) => ({ row, says: sayRowFault(fault) })),
    ...read.flatMap((row) => (row.ok ? [] : [row.fault])),
  ];
  if (says.length > 0) return failed(says.map((row) => `${file}, row ${row.row}: ${row.says}`));
  return ok(read.flatMap((row) => (row.ok ? [row.value] : [])));
}

function readText(file: string): string | undefined {
  try {
    return readFileSync(file, 'utf8');
  } catch {
    return undefined;
  }
}

function readBuild({ row, fields }: CsvRow, records: Records): Result<DatedBuild, { row: number; says: string }> {
  const { date = '', tank = '', count = '' } = fields;
  const day = parseDay(date);
  if (!day.ok) return failed({ row, says: `"${date}" is not a day; write it as 2027-06-28.` });
  if (!records.tank.has(tank)) {
    return failed({ row, says: `No tank called ${tank}.${didYouMean(tank, records.tank.keys())}` });
  }
  const builds = /^\d+$/.test(count) ? Number(count) : 0;
  if (builds < 1 || builds > MOST_BUILDS) return failed({ row, says: `Count "${count}" is not 1 to ${MOST_BUILDS}.` });
  return ok({ date: day.value, tank, count: builds });
}
