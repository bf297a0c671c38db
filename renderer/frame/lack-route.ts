import type { Missing } from '#shared-calc/buy/missing.ts';
import { tankMeasureId } from '#shared-calc/derive/open-measures.ts';
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

/** All measurements of a job are in one grid; without a job, a tank's is in the tank book and any other on the bench. */
function measureRoute(missing: Missing, { line: lines }: Pick<Records, 'line'>, jobs: readonly string[]): string {
  const { of, at, label } = missing;
  const line = [...lines.values()].find(({ name }) => name === at?.line);
  const field = line && tankFieldOf(line);
  const [job] = jobs;
  if (job !== undefined) return writeRoute('measures', ...jobs, field ? tankMeasureId(of, field) : `${job} ${label}`);
  return field === undefined ? writeRoute('bench') : writeRoute('tank-book', of, field);
}
