import { signal } from '@preact/signals';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { FindView, PlaceView } from '#renderer/frame/page-view.ts';
import { printAct } from '#renderer/print/print-acts.ts';
import type { DueNow } from '#renderer/store/due-store.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { TodayItem } from '#shared-calc/derive/today-item.ts';
import { sayDate } from '#shared-calc/prepare/say-day.ts';
import { SixWeeks } from './six-weeks.tsx';
import { TodayList } from './today-list.tsx';
import type { TodayState } from './today-state.ts';
import { whomOf, whoLabel } from './item-words.ts';

/** Today: what is overdue, what is to be done today and soon over all jobs and the workshop, and the next six weeks. */
export function todayPlace(api: JobApi): () => PlaceView {
  const state: TodayState = { api, who: signal(undefined), ticked: signal(undefined) };
  return () => {
    const context = contextNow(api);
    const due = api.due();
    const who = state.who.value;
    const items = who === undefined ? due.items : due.items.filter((item) => item.who === who);
    return {
      about: sayDate(context.today, context.display),
      aside: asideOf(due, items),
      acts: actsOf(state, due, context),
      work: <TodayList state={state} items={items} due={due} context={context} />,
      sidePanel: <SixWeeks items={items} context={context} />,
      find: findItem(items, context),
    };
  };
}

function asideOf({ isBehind }: DueNow, items: readonly TodayItem[]): string {
  if (isBehind && items.length === 0) return 'working';
  const overdue = items.filter(({ late }) => late > 0).length;
  return overdue === 0 ? 'nothing overdue' : `${overdue} overdue`;
}

function actsOf({ who }: TodayState, { items }: DueNow, { records }: BookContext): readonly PlaceAct[] {
  const people = [undefined, ...new Set(items.map((item) => item.who))];
  const next = people[(people.indexOf(who.value) + 1) % people.length];
  return [
    {
      label: who.value === undefined ? 'Everyone' : whoLabel(who.value, records),
      hint: 'Whose work is shown; press for the next',
      run: () => (who.value = next),
    },
    printAct(window),
  ];
}

function findItem(items: readonly TodayItem[], { records }: BookContext): FindView {
  const named = items.map((item) => ({ key: item.key, says: `${item.what}, ${whomOf(item, records)}` }));
  return {
    label: 'Find something to do',
    placeholder: 'Find an item',
    options: named.map(({ says }) => says),
    go: (words) => {
      const wanted = words.toLowerCase();
      const found =
        named.find(({ says }) => says.toLowerCase() === wanted) ??
        named.find(({ says }) => says.toLowerCase().includes(wanted));
      if (found) document.querySelector<HTMLElement>(`[data-item="${CSS.escape(found.key)}"]`)?.focus();
      return found !== undefined;
    },
  };
}
