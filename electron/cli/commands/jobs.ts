import { jobSummary } from '#shared-calc/jobs/job-summary.ts';
import type { Command } from '#electron/cli/command.ts';
import { jobJson, jobTable } from '#electron/cli/job-acts.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';

/** The jobs board: every job with its state, sizes and next step. */
export const jobsCommand: Command = {
  name: 'jobs',
  usage: 'jobs: the jobs board',
  options: bookOption,
  misuse: (given) => (given.words.length > 0 ? `What is ${given.words[0]} for?` : undefined),
  run: (given) =>
    withBook(given, (book) => {
      const records = book.records();
      const jobs = [...records.job.values()].map((job) => jobSummary(records, job));
      return { is: 'answer', json: jobs.map(jobJson), table: () => jobTable(jobs) };
    }),
};
