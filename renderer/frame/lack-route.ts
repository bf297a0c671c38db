import type { Missing } from '#shared-calc/buy/missing.ts';
import { tankFieldOf } from '#shared-calc/recipe/tank-figures.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { writeRoute } from './place-route.ts';

/** The link to the very cell where a missing figure is given. */
export function lackRoute(missing: Missing, records: Pick<Records, 'line'>, jobs: readonly string[] = []): string {
  const { what, of, kind } = missing;
  if (what === 'price') return writeRoute('prices', ...jobs, of);
  if (what === 'measure') return measureRoute(missing, records, jobs);
  if (kind === 'workshop') return writeRoute('workshop');
  return kind === 'margin' || kind === 'taxClass'
    ? writeRoute('rate-book', kind === 'margin' ? 'margins' : 'taxes', of)
    : writeRoute('rate-book', of);
}

/** A measurement of a tank is written in the tank book, any other figure on the bench. */
function measureRoute({ of, at }: Missing, { line: lines }: Pick<Records, 'line'>, [job]: readonly string[]): string {
  const line = [...lines.values()].find(({ name }) => name === at?.line);
  const field = line && tankFieldOf(line);
  if (field !== undefined) return writeRoute('tank-book', of, field);
  return job !== undefined && at ? writeRoute('bench', job, at.line, at.column) : writeRoute('bench');
}
