import type { BookContext } from '#renderer/books/book-api.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { jobName, jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import { writePrepare, type PreparePartId } from '#renderer/frame/prepare-route.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import css from './prepare.module.css';
import { Muted } from '#renderer/kit/muted.tsx';

interface OpenParts {
  readonly context: BookContext;
  readonly part: PreparePartId;
}

/** Shown while no job is open: asks which one to open. */
export function OpenAJob({ context, part }: OpenParts) {
  const jobs = jobsInOrder(context.records).filter(({ state }) => state !== 'closed');
  if (jobs.length === 0) {
    return (
      <EmptyNote>
        There is no job yet. <a href={writeRoute('jobs')}>Make the first on the jobs board.</a>
      </EmptyNote>
    );
  }
  return (
    <section class={css['openAJob']}>
      <h2>Which job?</h2>
      <ul onKeyDown={walkLinks}>
        {jobs.map((job) => (
          <li key={job.id}>
            <a href={writePrepare(job.id, part)}>
              {jobName(job)} <Muted>{job.state}</Muted>
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
