import { parseDay, type Day } from '#shared-calc/calendar/day.ts';
import type { CsvRow } from '#shared-calc/read/csv-rows.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { readListFile, type ReadRow } from './list-file.ts';

export interface DatedBuild {
  readonly date: Day;
  readonly tank: string;
  readonly count: number;
}

const MOST_BUILDS = 999;

/** Reads `--builds FILE.csv`: rows of date, tank, count. Names every invalid row; then no row is used. */
export function readBuildsFile(file: string, records: Records): Result<readonly DatedBuild[], readonly string[]> {
  return readListFile(file, ['date', 'tank', 'count'], (row) => readBuild(row, records));
}

function readBuild({ row, fields }: CsvRow, records: Records): ReadRow<DatedBuild> {
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
