import type { BookContext } from '#renderer/books/book-api.ts';
import type { FindView } from '#renderer/frame/page-view.ts';
import { jobName, jobsInOrder } from '#shared-calc/jobs/find-job.ts';

/** The field that finds a job by its name, and goes where `write` leads with it. */
export function findJob({ records }: BookContext, write: (job: string) => string): FindView {
  const jobs = jobsInOrder(records);
  return {
    label: 'Find a job',
    placeholder: 'Find a job',
    options: jobs.map(jobName),
    go: (words) => {
      const wanted = words.toLowerCase();
      const found =
        jobs.find((job) => jobName(job).toLowerCase() === wanted) ??
        jobs.find((job) => jobName(job).toLowerCase().includes(wanted));
      if (found) location.hash = write(found.id);
      return found !== undefined;
    },
  };
}
