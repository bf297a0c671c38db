import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { readCardsRest, writeCards } from '#renderer/frame/prepare-route.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { OpenedJob } from '#renderer/kit/opened-job.tsx';
import css from '#renderer/kit/part-page.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';
import { printAct } from '#renderer/print/print-acts.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { isCard, type CardId } from './card-kinds.ts';
import { cardPaper } from './card-papers.tsx';
import { CardsPart } from './cards-part.tsx';
import { findJob } from './find-job.ts';
import type { PartView } from './part-view.ts';
import type { PrepareState } from './prepare-state.ts';

/** The printed cards of the open job, and those of the workshop; `#/cards/J02/build`. */
export function cardsPlace(api: JobApi, state: PrepareState): (route: Route) => PlaceView {
  return ({ rest }) => {
    const context = contextNow(api);
    const route = readCardsRest(rest, context.records);
    const job = context.records.job.get(route.job ?? api.job.value ?? '');
    const view: PartView = { state, context, job, of: route.card, one: route.one };
    return isCard(route.card) ? paperView(view, route.card) : listView(view, context);
  };
}

function listView(view: PartView, context: BookContext): PlaceView {
  const { job, state } = view;
  return {
    about: job ? jobName(job) : '',
    aside: job ? '' : 'no job is open',
    acts: [],
    work: (
      <ScrollPage class={css['preparePage']}>
        <CardsPart {...view} />
        {job && <OpenedJob api={state.api} job={job.id} />}
      </ScrollPage>
    ),
    find: findJob(context, (id) => writeCards(id)),
  };
}

function paperView(view: PartView, card: CardId): PlaceView {
  const { job, state } = view;
  return {
    about: job ? jobName(job) : '',
    aside: 'on paper',
    acts: [{ label: 'Back to the cards', run: () => (location.hash = writeCards(job?.id)) }, printAct(window)],
    work: (
      <ScrollPage look="paper" label="Paper">
        {cardPaper(view, card)}
        {job && <OpenedJob api={state.api} job={job.id} />}
      </ScrollPage>
    ),
  };
}
