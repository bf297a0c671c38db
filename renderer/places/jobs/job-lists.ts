import type { BookContext } from '#renderer/books/book-hands.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import { needsCsv } from '#shared-calc/papers/needs-csv.ts';
import { pickListCsv } from '#shared-calc/papers/pick-list-csv.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { jobNeeds, jobPickLists } from './printed-job.ts';

const LABEL = 'Take out as CSV';

/** Saves a job's needs list as a list; where it cannot be worked the paper says why. */
export function needsListAct(job: Job, { records, workshop, today }: BookContext): PlaceAct {
  const save = () => {
    const needs = jobNeeds(records, job, today);
    if (needs.ok) downloadCsv(`needs ${job.id}`, needsCsv(needs.value.list, workshop));
  };
  return { label: LABEL, run: save };
}

/** Saves the pick lists of all sizes of a job as one list. */
export function pickListAct(job: Job, { records, workshop, display, today }: BookContext): PlaceAct {
  const save = () =>
    downloadCsv(`pick list ${job.id}`, pickListCsv(jobPickLists(records, { job, on: today, display }), workshop));
  return { label: LABEL, run: save };
}
