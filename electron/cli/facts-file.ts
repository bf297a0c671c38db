import { parseDay } from '#shared-calc/calendar/day.ts';
import { factSteps, factWhats, whatsOf, type StepFact } from '#shared-calc/prepare/step-facts.ts';
import type { CsvRow } from '#shared-calc/read/csv-rows.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { readListFile, type ReadRow } from './list-file.ts';

/** Reads `--facts FILE.csv`: rows of step, what, date. Names every invalid row; then no row is used. */
export function readFactsFile(file: string | undefined): Result<readonly StepFact[], readonly string[]> {
  return file === undefined ? ok([]) : readListFile(file, ['step', 'what', 'date'], readFact);
}

function readFact({ row, fields }: CsvRow): ReadRow<StepFact> {
  const { step: named = '', what: told = '', date = '' } = fields;
  const step = factSteps.find((each) => each === named);
  if (!step) return failed({ row, says: `No step called ${named}.${didYouMean(named, factSteps)}` });
  const what = factWhats.find((each) => each === told);
  if (!what || !whatsOf(step).includes(what)) {
    return failed({ row, says: `${step} can be ${whatsOf(step).join(', ')}; "${told}" is none of them.` });
  }
  const day = parseDay(date);
  if (!day.ok) return failed({ row, says: `"${date}" is not a day; write it as 2027-06-28.` });
  return ok({ step, what, on: day.value });
}
