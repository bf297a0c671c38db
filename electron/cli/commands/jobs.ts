import { derive } from '#shared-calc/derive/derived.ts';
import type { Command } from '#electron/cli/command.ts';
import { jobJson, jobTable, listedJobs } from '#electron/cli/job-acts.ts';
import { refusal } from '#electron/cli/outcome.ts';
import { readDay } from '#electron/cli/read-day.ts';
import { today } from '#electron/service/today.ts';
import { bookOption, withBook } from '#electron/cli/with-book.ts';

/** The jobs board: every job with its state, sizes and next step. */
export const jobsCommand: Command = {
  name: 'jobs',
  usage: 'jobs [--on DATE]: the jobs board',
  options: { ...bookOption, on: 'text' },
  misuse: (given) => (given.words.length > 0 ? `What is ${given.words[0]} for?` : undefined),
  run: (given) =>
    withBook(given, (book) => {
      const on = readDay(given, 'on');
      if (!on.ok) return refusal(on.fault);
      const derived = derive(book.records(), on.value ?? today());
      const jobs = listedJobs(derived);
      return { is: 'answer', json: jobs.map(jobJson), table: () => jobTable(jobs, derived.display) };
    }),
};
