import type { BookContext } from '#renderer/books/book-api.ts';
import type { Job } from '#shared-calc/records/records.ts';
import type { JobApi } from '#renderer/store/job-api.ts';

/** The input of each part of a job's card. */
export interface JobPart {
  readonly job: Job;
  readonly context: BookContext;
  readonly api: JobApi;
}
