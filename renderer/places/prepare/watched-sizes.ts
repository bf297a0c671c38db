import type { Day } from '#shared-calc/calendar/day.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import { sizeFigures } from '#shared-calc/papers/size-figures.ts';
import { watchBand } from '#shared-calc/papers/watch-band.ts';
import type { WatchBand } from '#shared-calc/prepare/watch.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';

export interface WatchedSize {
  /** The id of its record, and its key on the bench. */
  readonly id: string;
  readonly key: string;
  readonly called: string;
  readonly label: string;
  readonly band: WatchBand;
}

/** The sizes of a job with what their animals stand. */
export function watchedSizes(records: Records, job: Job, on: Day): readonly WatchedSize[] {
  const { sheet, bench } = openJob(records, job, on);
  const sizes = sheet.columns.map(({ size, key, label, tank }) => ({
    id: size,
    key,
    called: calledOf({ key, label }),
    label: tank.label,
    band: watchBand(sizeFigures(bench, key, plainDisplay)),
  }));
  return sizes;
}
