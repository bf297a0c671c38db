import { computed } from '@preact/signals';
import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { JobSwitchView, PageView } from '#renderer/frame/page-view.ts';
import { readRoute, routeWithJob, writeRoute } from '#renderer/frame/place-route.ts';
import { AskedHouse } from '#renderer/books/asked-house.tsx';
import { droppedFiles } from '#renderer/files/dropped-file.tsx';
import { helpState } from '#renderer/help/help-state.ts';
import { jobApi, jobAtHand } from '#renderer/store/job-api.ts';
import type { PageStore } from '#renderer/store/page-store.ts';
import { jobsInOrder } from '#shared-calc/jobs/find-job.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { keepPageSize } from './print/page-size.ts';
import { openListState, type ListState } from './places/price-lists/list-state.ts';
import { openPlaces } from './places/all-places.tsx';

const keys: PageView['keys'] = [
  ['F2', 'edit'],
  ['/', 'find'],
  ['F8', 'next flag'],
  ['F1', 'help'],
];

/** The page over an open book: every view, created once, the status line, and requests from the desktop menu. */
export function pageOf(store: PageStore): PageView {
  const lists = openListState(store.book);
  const places = openPlaces(store, lists);
  keepPageSize(document, store.book.records);
  const help = helpState();
  const dropped = droppedFiles({ api: store.book, takeList: (file) => takeDroppedList(lists, file) });
  const nextFlag = (back: boolean) => goToFlag(store, back);
  store.book.onAsk((ask) => {
    if (ask.is === 'go') location.hash = writeRoute(ask.place);
    else if (ask.act === 'help') help.show();
    else if (ask.act === 'next flag') nextFlag(false);
    else if (ask.act === 'find') document.querySelector<HTMLInputElement>('#work > header input')?.focus();
    else store.book[ask.act]();
  });
  return {
    workshop: computed(() => workshopOf(store.book.records.value).name),
    jobs: jobSwitch(store),
    line: store.book.line,
    lineActs: { undo: store.book.undo, redo: store.book.redo },
    keys,
    help,
    nextFlag,
    nextMoved: (back) =>
      goOnBench(store, store.bench.nextMoved(back), 'The last edit moved no other figure on the bench.'),
    refuse: store.book.refuse,
    moveOn: store.book.moveOn,
    place: (route) => {
      const view = places[route.place](route);
      const asked = <AskedHouse house={store.house} book={store.book} />;
      const work = (
        <>
          {view.work}
          {asked}
          {dropped.dialog()}
        </>
      );
      return { ...view, work };
    },
  };
}

/** A dropped list is read where price lists are matched. */
function takeDroppedList({ takeFile }: ListState, file: File): void {
  location.hash = writeRoute('price-lists');
  takeFile(file);
}

function jobSwitch(store: PageStore): JobSwitchView {
  const api = jobApi(store);
  return {
    open: computed(() => jobAtHand(api)),
    list: () => {
      const jobs = jobsInOrder(api.records.peek());
      const isClosed = ({ state }: (typeof jobs)[number]) => state === 'closed';
      return [...jobs.filter((job) => !isClosed(job)), ...jobs.filter(isClosed)];
    },
    take: (job) => {
      const link = routeWithJob(readRoute(location.hash), api.job.peek(), job);
      if (link === undefined) api.openJob(job);
      else location.hash = link;
    },
  };
}

function goToFlag(store: PageStore, back: boolean): void {
  goOnBench(store, store.bench.nextFlag(back), 'No flag on the bench.');
}

/** From another view it opens the bench first. */
function goOnBench({ bench, strips, book }: PageStore, place: BoxPlace | undefined, none: string): void {
  if (!place) return book.say(none);
  if (strips.current) return strips.current.go(place);
  bench.acts.choose(place);
  location.hash = writeRoute('bench');
}
