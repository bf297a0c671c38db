import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookContext } from '#renderer/books/book-api.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import { needsCsv } from '#shared-calc/papers/needs-csv.ts';
import { pickPlants } from '#shared-calc/papers/pick-paper.ts';
import { pickListCsv } from '#shared-calc/papers/pick-list-csv.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { jobNeeds } from '#shared-calc/derive/job-needs.ts';
import { pickLists } from '#shared-calc/papers/pick-list.ts';

/** Saves a job's needs list as a file; if it cannot be computed, the paper says why. */
export function needsListAct({ id }: Job, context: BookContext): PlaceAct {
  const save = () => {
    const job = context.job(id);
    const needs = job && jobNeeds(context, job);
    if (needs?.ok) downloadCsv(`needs ${id}`, needsCsv(needs.value.list, context.workshop));
  };
  return { label: actNames.saveCsv, run: save };
}

/** Saves the pick lists of all sizes of a job as one file. */
export function pickListAct({ id }: Job, { records, workshop, display, job: jobOf }: BookContext): PlaceAct {
  const save = () => {
    const job = jobOf(id);
    if (job)
      downloadCsv(
        `pick list ${id}`,
        pickListCsv(pickLists(job.bench, records, display, pickPlants({ ...job, records })), workshop),
      );
  };
  return { label: actNames.saveCsv, run: save };
}
