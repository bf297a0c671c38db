import { Button } from '#renderer/kit/button.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import { openMade } from './open-made.ts';
import { signal, type Signal } from '@preact/signals';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { FindView, PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { printAct } from '#renderer/print/print-acts.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { boardByDay, boardByState } from '#shared-calc/derive/job-board.ts';
import { Board } from './board.tsx';
import { JobCard } from './job-card.tsx';
import { countAnswers } from '#shared-calc/jobs/survey-questions.ts';
import { SurveyWaits } from './survey-waits.tsx';
import { surveyActs, SurveyPage } from './survey-page.tsx';
import { JobPaper } from './job-papers.tsx';
import { needsListAct, pickListAct } from './job-lists.ts';
import { OpenedJob } from '#renderer/kit/opened-job.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { NewJobDialog } from './new-job-dialog.tsx';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import css from './jobs.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

type Order = 'state' | 'day';

interface Board {
  readonly api: JobApi;
  readonly order: Signal<Order>;
  readonly asking: Signal<boolean>;
}

/** The jobs board: all jobs at the left, the card of the open job next to them; `#/jobs/J02/needs` is a paper, `#/jobs/J02/survey` its survey. */
export function jobsPlace(api: JobApi): (route: Route) => PlaceView {
  const board: Board = { api, order: signal<Order>('state'), asking: signal(false) };
  return ({ rest: [id, paper] }) => {
    const context = contextNow(api);
    const job = context.records.job.get(id ?? api.job.value ?? '');
    if (job && (paper === 'needs' || paper === 'pick-list')) return paperView(job, context, paper);
    if (job && paper === 'survey') return surveyView(job, context, api);
    return boardView(board, job, context);
  };
}

function paperView(job: Job, context: BookContext, paper: 'needs' | 'pick-list'): PlaceView {
  return {
    about: jobName(job),
    aside: paper === 'needs' ? 'needs list' : 'pick list',
    acts: [
      { label: 'Back to the job', run: () => (location.hash = writeRoute('jobs', job.id)) },
      paper === 'needs' ? needsListAct(job, context) : pickListAct(job, context),
      printAct(window),
    ],
    work: (
      <ScrollPage look="paper" label="Paper">
        <JobPaper job={job} context={context} kind={paper === 'needs' ? 'needs' : 'pick'} />
      </ScrollPage>
    ),
  };
}

function surveyView(job: Job, context: BookContext, api: JobApi): PlaceView {
  const { all, answered } = countAnswers(job.survey);
  return {
    about: jobName(job),
    aside: `survey; ${answered} of ${all} answered`,
    acts: surveyActs(job.id),
    work: <SurveyPage job={job} context={context} api={api} />,
    sidePanel: <SurveyWaits job={job} context={context} api={api} />,
  };
}

function boardView(board: Board, job: Job | undefined, context: BookContext): PlaceView {
  const { api, order, asking } = board;
  const { records, today } = context;
  const facts = { records, today, items: api.due().items };
  const groups = order.value === 'state' ? boardByState(facts) : boardByDay(facts);
  return {
    about: job ? jobName(job) : '',
    aside: job ? 'open' : 'no job is open',
    acts: boardActs(board, job),
    work: (
      <div class={css['jobsWork']}>
        <Board groups={groups} open={job?.id} byState={order.value === 'state'} days={context.display} />
        {job ? (
          <JobCard key={job.id} job={job} context={context} api={api} />
        ) : (
          <EmptyNote>
            {records.job.size === 0 ? 'There is no job yet. ' : 'Open a job to see its card.'}
            {records.job.size === 0 && (
              <Button look="plain" onClick={() => (asking.value = true)}>
                Make the first
              </Button>
            )}
          </EmptyNote>
        )}
        {job && <OpenedJob api={api} job={job.id} />}
        {asking.value && <NewJobDialog api={api} close={() => (asking.value = false)} />}
      </div>
    ),
    find: findJobs(records.job.values()),
  };
}

function boardActs({ api, order, asking }: Board, job: Job | undefined): readonly PlaceAct[] {
  const by = order.value === 'state' ? 'day' : 'state';
  const copy = (from: Job) => {
    api.doAct('copyJob', { job: from.id }, (change) => openMade(api, change));
  };
  return [
    { label: by === 'day' ? 'By next day' : 'By state', run: () => (order.value = by) },
    job ? { label: actNames.copyJob, run: () => copy(job) } : { label: actNames.copyJob, hint: 'Open a job first.' },
    { label: actNames.newJob, main: true, run: () => (asking.value = true) },
  ];
}

function findJobs(jobs: Iterable<Job>): FindView {
  const all = [...jobs];
  const names = (job: Job) => [job.id, job.title, jobName(job), job.client].map((name) => name.toLowerCase());
  return {
    label: 'Find a job or a client',
    placeholder: 'Find a job',
    options: all.map(jobName),
    go: (words) => {
      const wanted = words.toLowerCase();
      const found =
        all.find((job) => names(job).includes(wanted)) ??
        all.find((job) => names(job).some((name) => name.includes(wanted)));
      if (found) location.hash = writeRoute('jobs', found.id);
      return found !== undefined;
    },
  };
}
