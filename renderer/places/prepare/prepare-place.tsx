import { actNames } from '#shared-calc/words/act-names.ts';
import { contextNow } from '#renderer/books/book-api.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { findJob } from './find-job.ts';
import { ChecksPart } from './checks-part.tsx';
import { DatesPart } from './dates-part.tsx';
import { saveAllPlans, saveJobPlan } from './save-calendar.ts';
import { JobsPart } from './jobs-part.tsx';
import { LeavesPart } from './leaves-part.tsx';
import type { PartView } from './part-view.ts';
import type { PrepareState } from './prepare-state.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import {
  prepareParts,
  readPrepareRest,
  writeCards,
  writePrepare,
  type PreparePartId,
} from '#renderer/frame/prepare-route.ts';
import { Tabs } from '#renderer/kit/tabs.tsx';
import { TookPart } from './took-part.tsx';
import { WatchPart } from './watch-part.tsx';
import css from '#renderer/kit/part-page.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

/**
 * The prep plan: a job's dates, all jobs on one line, checks, leaves, the watch, and what it took.
 */
export function preparePlace(api: JobApi, state: PrepareState): (route: Route) => PlaceView {
  return ({ rest }) => {
    const context = contextNow(api);
    const route = readPrepareRest(rest, context.records);
    if (route.job !== undefined && route.job !== api.job.peek()) queueMicrotask(() => api.openJob(route.job ?? ''));
    const job = context.records.job.get(route.job ?? api.job.value ?? '');
    const view: PartView = { state, context, job, of: route.of, one: undefined };
    return partView(view, route.part);
  };
}

function partView(view: PartView, part: PreparePartId): PlaceView {
  const { context, job } = view;
  const Part = partOf[part];
  return {
    about: job ? jobName(job) : '',
    aside: job ? '' : 'no job is open',
    acts: actsOf(view, part),
    work: (
      <ScrollPage class={css['preparePage']}>
        <Tabs label="Parts of the prep plan">
          {prepareParts.map(({ id, title }) => (
            <a key={id} href={writePrepare(job?.id, id)} aria-current={id === part ? 'page' : undefined}>
              {title}
            </a>
          ))}
        </Tabs>
        <Part key={`${part} ${job?.id ?? ''}`} {...view} />
      </ScrollPage>
    ),
    find: findJob(context, (id) => writePrepare(id, part)),
  };
}

const partOf: Readonly<Record<PreparePartId, (view: PartView) => preact.JSX.Element | null>> = {
  dates: DatesPart,
  jobs: JobsPart,
  checks: ChecksPart,
  leaves: LeavesPart,
  watch: WatchPart,
  took: TookPart,
};

const printedAs: Readonly<Partial<Record<PreparePartId, string>>> = { dates: 'prep', jobs: 'areas', watch: 'watch' };

function actsOf(view: PartView, part: PreparePartId): readonly PlaceAct[] {
  const { job } = view;
  const card = printedAs[part];
  const printed: PlaceAct | undefined =
    card === undefined
      ? undefined
      : { label: actNames.onPaper, run: () => (location.hash = writeCards(job?.id, card)) };
  const acts = printed && (job || card === 'areas') ? [printed] : [];
  if (part === 'jobs') return [...acts, { label: 'Save all as calendar', main: true, run: () => saveAllPlans(view) }];
  if (part !== 'dates') return acts;
  return [
    ...acts,
    job
      ? {
          label: actNames.saveCalendar,
          main: true,
          hint: 'A file that calendars take in',
          run: () => saveJobPlan(view),
        }
      : { label: actNames.saveCalendar, hint: 'Open a job first.' },
  ];
}
