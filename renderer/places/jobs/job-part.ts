import type { BookContext } from '#renderer/books/book-api.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { JobApi } from '#renderer/store/job-api.ts';

/** What each part of a job's card is made from. */
export interface JobPart {
  readonly job: Job;
  readonly context: BookContext;
  readonly api: JobApi;
}
