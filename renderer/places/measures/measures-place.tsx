import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { JobScope, overJobs, quoteActs, soFar, type JobsApi } from '#renderer/books/over-jobs.tsx';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { Link } from '#renderer/kit/link.tsx';
import { PanelHead } from '#renderer/kit/side-panel.tsx';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { lineLabel } from '#shared-calc/recipe/line-label.ts';
import { measureTable, type MeasureRow } from './measure-rows.ts';

/** Missing measurements as one grid: `#/measures` over the workshop, `#/measures/J01` of a job. */
export function measuresPlace(api: JobsApi): (route: Route) => PlaceView {
  return overJobs(api, (jobs) => tablePlace(api, jobs));
}

function tablePlace(api: JobsApi, jobs: readonly string[]): (route: Route) => PlaceView {
  const view = bookPlace({
    api,
    table: measureTable(jobs),
    above: () => (
      <JobScope place="measures" says="Measurements of" jobs={jobs} open={api.job.value} context={contextNow(api)} />
    ),
    sidePanel: (row, context) => <MeasurePanel row={row} context={context} />,
    whenEmpty:
      api.records.peek().size.size === 0
        ? 'No job has a size yet: which measurements are missing is known with the first.'
        : 'No measurement is missing.',
  });
  return (route) => {
    const context = contextNow(api);
    return {
      ...view(route),
      aside: soFar(jobs, context, 'what holds up most stands first'),
      acts: [...quoteActs(jobs, context)],
    };
  };
}

interface PanelParts {
  readonly row: MeasureRow;
  readonly context: BookContext;
}

/** What waits for the chosen measurement, and where it stands. */
function MeasurePanel({ row: { thing, line, at, waiting, jobs, isGiven }, context: { records } }: PanelParts) {
  const job = records.job.get(jobs[0] ?? '');
  return (
    <>
      <PanelHead where={thing} title={lineLabel(line)} />
      <section>
        <h3>{isGiven ? 'Waits no more' : 'Waits for it'}</h3>
        <ul>
          {waiting.map((label) => (
            <li key={label}>{label}</li>
          ))}
        </ul>
      </section>
      <section>
        <h3>Where it stands</h3>
        <p>
          {at.kind === 'tank' ? (
            <Link href={writeRoute('tank-book', at.tank, at.key)}>The tank book, for every job</Link>
          ) : (
            <Link href={writeRoute('bench', at.job, line.name, at.column)}>
              The bench of {job ? jobName(job) : at.job}
            </Link>
          )}
        </p>
      </section>
    </>
  );
}
