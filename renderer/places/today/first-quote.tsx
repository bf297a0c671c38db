import type { BookContext } from '#renderer/books/book-api.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Link } from '#renderer/kit/link.tsx';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import css from './start-list.module.css';

interface QuoteParts {
  readonly jobs: readonly string[];
  readonly context: BookContext;
}

/** Once nothing is missing for a first quote: the way to it. */
export function FirstQuote({ jobs, context: { records } }: QuoteParts) {
  return (
    <section class={css['start']} aria-label="To a first quote">
      <h2>To a first quote</h2>
      {jobs.map((id) => {
        const job = records.job.get(id);
        return (
          <p key={id}>
            Nothing is missing any more.{' '}
            <Link href={writeRoute('quotes', id)}>See the quote of {job ? jobName(job) : id}, and issue it</Link>
          </p>
        );
      })}
    </section>
  );
}
