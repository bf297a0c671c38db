import { actNames } from '#shared-calc/words/act-names.ts';
import { signal, type Signal } from '@preact/signals';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { jobAtHand, type JobApi } from '#renderer/store/job-api.ts';
import { PutInDialog } from './put-in-dialog.tsx';
import { storeGoods, storeValue, type StoredGoods } from '#shared-calc/derive/store-goods.ts';
import { StorePanel } from './store-panel.tsx';
import { StoreTable } from './store-table.tsx';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

type Asked = 'put in' | undefined;

/** The Store: what there is of all goods, and next to it the lots of the selected ones; `#/store/M01`. */
export function storePlace(api: JobApi): (route: Route) => PlaceView {
  const dialog = signal<Asked>(undefined);
  return ({ rest: [goods] }) => {
    const context = contextNow(api);
    const rows = storeGoods(context);
    const row = rows.find(({ of }) => of === goods);
    const leave = () => (dialog.value = undefined);
    return {
      about: '',
      aside: rows.length === 0 ? '' : sayValue(context),
      acts: storeActs(api, dialog),
      work: (
        <ScrollPage label="What lies in the Store">
          <StoreTable rows={rows} chosen={goods} context={context} />
          {dialog.value === 'put in' && <PutInDialog api={api} goods={goods} close={leave} />}
        </ScrollPage>
      ),
      sidePanel: <StorePanel row={row} context={context} api={api} />,
      find: findIn(rows),
    };
  };
}

/** `worth 312.40 cr`, at what was paid; what has no price is named, for it is not worth nothing. */
function sayValue(context: BookContext): string {
  const { coins, notKnown } = storeValue(context);
  const { workshop } = context;
  const worth = `worth ${showCoins(coins, workshop)} ${workshop.currency}`;
  return notKnown.length === 0 ? worth : `${worth}, without ${notKnown.join(', ')}: no price known`;
}

function storeActs(api: JobApi, asked: Signal<Asked>): readonly PlaceAct[] {
  const job = jobAtHand(api);
  return [
    job && job.state !== 'closed'
      ? {
          label: `Keep for ${job.id}`,
          hint: 'As much of what it needs as is free',
          run: () => void api.doAct('keepNeeded', { job: job.id }),
        }
      : { label: actNames.keepForJob, hint: 'Open a job first.' },
    { label: actNames.putIn, main: true, run: () => (asked.value = 'put in') },
  ];
}

function findIn(rows: readonly StoredGoods[]): NonNullable<PlaceView['find']> {
  const names = ({ of, label }: StoredGoods) => [of, label, `${of} ${label}`].map((name) => name.toLowerCase());
  return {
    label: 'Find goods in the Store',
    placeholder: 'Find goods',
    options: rows.map(({ of, label }) => `${of} ${label}`),
    go: (words) => {
      const wanted = words.toLowerCase();
      const found =
        rows.find((row) => names(row).includes(wanted)) ??
        rows.find((row) => names(row).some((name) => name.includes(wanted)));
      if (found) location.hash = writeRoute('store', found.of);
      return found !== undefined;
    },
  };
}
