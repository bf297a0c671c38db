import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { FindView, PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { jobName, jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import { printAct } from '#renderer/print/print-acts.ts';
import { cardPaper, isCard } from './card-papers.tsx';
import { CardsPart } from './cards-part.tsx';
import { ChecksPart } from './checks-part.tsx';
import { DatesPart } from './dates-part.tsx';
import { saveAllPlans, saveJobPlan } from './save-calendar.ts';
import { JobsPart } from './jobs-part.tsx';
import { LeavesPart } from './leaves-part.tsx';
import type { PartView } from './part-view.ts';
import { openPrepareState } from './prepare-state.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import { prepareParts, readPrepareRest, writePrepare, type PreparePartId } from '#renderer/frame/prepare-route.ts';
import { Tabs } from '#renderer/kit/tabs.tsx';
import { TookPart } from './took-part.tsx';
import { WatchPart } from './watch-part.tsx';
import css from '#renderer/kit/part-page.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

/**
 * The prep plan: a job's dates, all jobs on one line, checks, leaves, the watch, what it took, and the printed cards.
 */
export function preparePlace(api: JobApi): (route: Route) => PlaceView {
  const state = openPrepareState(api, window);
  return ({ rest }) => {
    const context = contextNow(api);
    const route = readPrepareRest(rest, context.records);
    if (route.job !== undefined && route.job !== api.job.peek()) queueMicrotask(() => api.openJob(route.job ?? ''));
    const job = context.records.job.get(route.job ?? api.job.value ?? '');
    const view: PartView = { state, context, job, of: route.of, one: route.one };
    if (route.part === 'cards' && isCard(route.of)) return paperView(view, route.of);
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
    find: findJob(part, context),
  };
}

const partOf: Readonly<Record<PreparePartId, (view: PartView) => preact.JSX.Element | null>> = {
  dates: DatesPart,
  jobs: JobsPart,
  checks: ChecksPart,
  leaves: LeavesPart,
  watch: WatchPart,
  took: TookPart,
  cards: CardsPart,
};

const printedAs: Readonly<Partial<Record<PreparePartId, string>>> = { dates: 'prep', jobs: 'areas', watch: 'watch' };

function actsOf(view: PartView, part: PreparePartId): readonly PlaceAct[] {
  const { job } = view;
  const card = printedAs[part];
  const printed: PlaceAct | undefined =
    card === undefined
      ? undefined
      : { label: 'On paper', run: () => (location.hash = writePrepare(job?.id, 'cards', card)) };
  const acts = printed && (job || card === 'areas') ? [printed] : [];
  if (part === 'jobs') return [...acts, { label: 'Save all as calendar', main: true, run: () => saveAllPlans(view) }];
  if (part !== 'dates') return acts;
  return [
    ...acts,
    job
      ? { label: 'Save as calendar', main: true, hint: 'A file that calendars take in', run: () => saveJobPlan(view) }
      : { label: 'Save as calendar', hint: 'Open a job first.' },
  ];
}

function paperView(view: PartView, card: Parameters<typeof cardPaper>[1]): PlaceView {
  const { job } = view;
  return {
    about: job ? jobName(job) : '',
    aside: 'on paper',
    acts: [
      { label: 'Back to the cards', run: () => (location.hash = writePrepare(job?.id, 'cards')) },
      printAct(window),
    ],
    work: (
      <ScrollPage look="paper" label="Paper">
        {cardPaper(view, card)}
      </ScrollPage>
    ),
  };
}

function findJob(part: PreparePartId, { records }: BookContext): FindView {
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
      if (found) location.hash = writePrepare(found.id, part);
      return found !== undefined;
    },
  };
}
