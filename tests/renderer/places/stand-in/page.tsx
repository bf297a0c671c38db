import { helpState } from '#renderer/help/help-state.ts';
import { signal } from '@preact/signals';
import { contextNow } from '#renderer/books/book-api.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { mountPage } from '#renderer/mount-page.tsx';
import { cultureBookPlace } from '#renderer/places/culture-book/culture-book-place.tsx';
import { functionBookPlace } from '#renderer/places/function-book/function-book-place.tsx';
import { materialBookPlace } from '#renderer/places/material-book/material-book-place.tsx';
import { needsPlace } from '#renderer/places/needs/needs-place.tsx';
import { plantBookPlace } from '#renderer/places/plant-book/plant-book-place.tsx';
import { rateBookPlace } from '#renderer/places/rate-book/rate-book-place.tsx';
import { tankBookPlace } from '#renderer/places/tank-book/tank-book-place.tsx';
import { workshopPlace } from '#renderer/places/workshop/workshop-place.tsx';
import { pageClock } from '#renderer/store/clock.ts';
import { openPageStore } from '#renderer/store/page-store.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { standInService } from './stand-in-service.ts';

/** The book views over a book that exists only in this page; `?plain` is one without prices and jobs. */
const file = location.search === '?plain' ? './plain.json' : './demo.json';
const data: unknown = await (await fetch(file)).json();
const opened = await openPageStore(standInService(data), pageClock());
if (!opened.ok) throw new Error(opened.fault);
const { book, bench } = opened.value;

const elsewhere: PlaceView = {
  about: '',
  aside: '',
  acts: [],
  work: <p>Elsewhere.</p>,
};

function benchStandIn(): PlaceView {
  const context = contextNow(book);
  return { ...elsewhere, work: <p>{[...context.records.size.keys()].join(', ')}</p> };
}

const places: Readonly<Partial<Record<Route['place'], (route: Route) => PlaceView>>> = {
  bench: benchStandIn,
  needs: needsPlace({ ...book, opened: bench.opened, open: bench.open }),
  'tank-book': tankBookPlace(book),
  'material-book': materialBookPlace(book),
  'plant-book': plantBookPlace(book),
  'culture-book': cultureBookPlace(book),
  'rate-book': rateBookPlace(book),
  'function-book': functionBookPlace(book),
  workshop: workshopPlace(book),
};

mountPage({
  workshop: signal(workshopOf(book.records.value).name),
  line: book.line,
  lineActs: { undo: book.undo, redo: book.redo },
  keys: [['F1', 'help']],
  help: helpState(),
  nextMoved: () => undefined,
  nextFlag: () => undefined,
  refuse: book.refuse,
  moveOn: () => undefined,
  place: (route) => places[route.place]?.(route) ?? elsewhere,
});
