import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { JobSheet } from '#shared-calc/jobs/job-sheet.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import { sizeFigures } from './size-figures.ts';
import type { WatchBand } from './watch.ts';
import { watchBand } from './watch-band.ts';

export interface WatchedSize {
  /** The id of its record, and its key on the bench. */
  readonly id: string;
  readonly key: string;
  readonly called: string;
  readonly label: string;
  readonly band: WatchBand;
}

/** The sizes of a job with the range that their animals tolerate. */
export function watchedSizes({ columns }: Pick<JobSheet, 'columns'>, bench: Bench): readonly WatchedSize[] {
  return columns.map(({ size, key, label, tank }) => ({
    id: size,
    key,
    called: calledOf({ key, label }),
    label: tank.label,
    band: watchBand(sizeFigures(bench, key, plainDisplay)),
  }));
}
