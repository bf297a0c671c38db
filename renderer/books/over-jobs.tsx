import { Fragment } from 'preact';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { Tabs } from '#renderer/kit/tabs.tsx';
import { lackedBy } from '#shared-calc/derive/start-list.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { atLeast, sayPart } from '#shared-calc/papers/quote-part.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import type { BookApi, BookContext } from './book-api.ts';

export interface JobsApi extends BookApi {
  /** The open job. */
  readonly job: { readonly value: string | undefined };
}

/** A view over the jobs that its link names, or over the whole workshop; made anew on each visit. */
export function overJobs(
  api: JobsApi,
  placeOf: (jobs: readonly string[]) => (route: Route) => PlaceView,
): (route: Route) => PlaceView {
  let shown: Route | undefined;
  let visit = 0;
  let place: (route: Route) => PlaceView = () => ({ about: '', aside: '', acts: [], work: null });
  return (route) => {
    if (route !== shown) {
      shown = route;
      visit += 1;
      place = placeOf(route.rest.filter((each) => api.records.peek().job.has(each)));
    }
    const view = place(route);
    return { ...view, work: <Fragment key={visit}>{view.work}</Fragment> };
  };
}

/** What one job comes to so far; over several, how the rows are sorted. */
export function soFar(jobs: readonly string[], { job, workshop }: BookContext, sorted: string): string {
  const [only, ...others] = jobs;
  const known = only === undefined || others.length > 0 ? undefined : job(only)?.known();
  if (!known?.ok) return sorted;
  const price = `${showCoins(known.value.quote.grossCoins, workshop)}\u00a0${workshop.currency}`.trimEnd();
  return [atLeast(price, known.value), sayPart(known.value)].filter((words) => words !== '').join('; ');
}

/** Once nothing is missing, the way to the quote. */
export function quoteActs(jobs: readonly string[], context: BookContext): readonly PlaceAct[] {
  return jobs
    .filter((job) => lackedBy(context, job)?.length === 0)
    .map((job) => ({
      label: jobs.length === 1 ? 'See the quote' : `See the quote of ${job}`,
      main: true,
      hint: 'Nothing is missing any more',
      run: () => (location.hash = writeRoute('quotes', job)),
    }));
}

interface ScopeParts {
  readonly place: 'prices' | 'measures';
  readonly says: string;
  readonly jobs: readonly string[];
  readonly open: string | undefined;
  readonly context: BookContext;
}

/** The open job, what was asked for, or the whole workshop. */
export function JobScope({ place, says, jobs, open, context: { records } }: ScopeParts) {
  const asked = jobs.join();
  const one = records.job.get(open ?? '');
  const others = jobs.length > 0 && asked !== one?.id;
  return (
    <Tabs label={says}>
      {one && (
        <a href={writeRoute(place, one.id)} aria-current={asked === one.id ? 'page' : undefined}>
          {jobName(one)}
        </a>
      )}
      {others && (
        <a href={writeRoute(place, ...jobs)} aria-current="page">
          {jobs.join(', ')}
        </a>
      )}
      <a href={writeRoute(place)} aria-current={jobs.length === 0 ? 'page' : undefined}>
        The whole workshop
      </a>
    </Tabs>
  );
}
