import { helpState } from '#renderer/help/help-state.ts';
import { failed } from '#shared-calc/result.ts';
import { actTable } from '#shared-calc/acts/all-acts.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { computed, signal } from '@preact/signals';
import type { QuietLineView } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { mountPage } from '#renderer/mount-page.tsx';
import { culturesPlace } from '#renderer/places/cultures/cultures-place.tsx';
import { cardsPlace } from '#renderer/places/prepare/cards-place.tsx';
import { preparePlace } from '#renderer/places/prepare/prepare-place.tsx';
import { openPrepareState } from '#renderer/places/prepare/prepare-state.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import { dueOf } from '#shared-calc/derive/today.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { fromRecordLists, RecordListsSchema } from '#shared-calc/contract/record-lists.ts';
import { applyChange, invertChange, isEmptyChange, type Change } from '#shared-calc/records/change.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';

/** The views of preparing over a book that exists only in this page. */
const answer: unknown = await (await fetch('./book.json')).json();
const { today, lists } = answer as { readonly today: string; readonly lists: unknown };
const records = signal(fromRecordLists(RecordListsSchema.parse(lists)));
const info = signal({
  opening: 'stand-in',
  name: 'Busy',
  path: '/books/Busy.loamwright',
  revision: 1,
  savedAt: '',
  notices: [],
  today,
});
const said = signal<QuietLineView['said']>(undefined);
const done = signal<readonly Change[]>([]);
const job = signal<string | undefined>(undefined);

const apply = (change: Change) => {
  if (isEmptyChange(change)) return;
  records.value = applyChange(records.value, change);
  done.value = [...done.value, change];
  said.value = undefined;
};
const refuse = (words: string) => {
  said.value = { words, refused: true };
  return words;
};

const api: JobApi = {
  editHouse: (_, direct) => direct(),
  due: () => ({ items: dueOf(api.derived.value), start: [], isBehind: false }),
  records,
  derived: computed(() => derive(records.value, today)),
  info,
  doAct: (name, input, then) => {
    const change = actTable[name].run(derive(records.value, today), input);
    if (!change.ok) return refuse(sayActFault(change.fault));
    apply(change.value);
    then?.(change.value);
    return undefined;
  },
  say: (words) => (said.value = { words, refused: false }),
  refuse,
  job,
  openJob: (id) => (job.value = id),
  issue: () => Promise.resolve(failed('Nothing is issued here.')),
};

const undo = () => {
  const last = done.value.at(-1);
  if (!last) return;
  records.value = applyChange(records.value, invertChange(last));
  done.value = done.value.slice(0, -1);
};

const prepare = openPrepareState(api, window);
const places: Readonly<Partial<Record<Route['place'], (route: Route) => PlaceView>>> = {
  prepare: preparePlace(api, prepare),
  cards: cardsPlace(api, prepare),
  cultures: culturesPlace(api),
};
const elsewhere: PlaceView = {
  about: '',
  aside: '',
  acts: [],
  work: <p>Elsewhere.</p>,
};

mountPage({
  workshop: computed(() => workshopOf(records.value).name),
  line: computed<QuietLineView>(() => {
    const last = done.value.at(-1)?.label;
    return { saved: 'Saved', ...(last !== undefined && { undo: last }), ...(said.value && { said: said.value }) };
  }),
  lineActs: { undo, redo: () => undefined },
  keys: [['F1', 'help']],
  help: helpState(),
  nextMoved: () => undefined,
  nextFlag: () => undefined,
  refuse: () => undefined,
  moveOn: () => undefined,
  place: (route) => places[route.place]?.(route) ?? elsewhere,
});
