import { signal, type Signal } from '@preact/signals';
import { contextNow } from '#renderer/books/book-api.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { jobAtHand, type JobApi } from '#renderer/store/job-api.ts';
import { PutInDialog } from './put-in-dialog.tsx';
import { ReceiveDialog } from './receive-dialog.tsx';
import { storeRows, type StoreRow } from './store-rows.ts';
import { StorePanel } from './store-panel.tsx';
import { StoreTable } from './store-table.tsx';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

type Asked = 'put in' | 'receive' | undefined;

/** The Store: the stock of each material, and next to it the entries of the selected one; `#/store/M01`. */
export function storePlace(api: JobApi): (route: Route) => PlaceView {
  const dialog = signal<Asked>(undefined);
  return ({ rest: [material] }) => {
    const context = contextNow(api);
    const rows = storeRows(context.records, context.today);
    const row = rows.find((each) => each.material === material);
    const leave = () => (dialog.value = undefined);
    return {
      about: '',
      aside: rows.length === 1 ? 'one material' : `${rows.length} materials`,
      acts: storeActs(api, dialog),
      work: (
        <ScrollPage label="What lies in the Store">
          <StoreTable rows={rows} chosen={material} context={context} />
          {dialog.value === 'put in' && <PutInDialog api={api} material={material} close={leave} />}
          {dialog.value === 'receive' && <ReceiveDialog api={api} close={leave} />}
        </ScrollPage>
      ),
      sidePanel: <StorePanel row={row} context={context} api={api} />,
      find: findIn(rows),
    };
  };
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
      : { label: 'Keep for a job', hint: 'Open a job first.' },
    { label: 'Receive an order', run: () => (asked.value = 'receive') },
    { label: 'Put in', main: true, run: () => (asked.value = 'put in') },
  ];
}

function findIn(rows: readonly StoreRow[]): NonNullable<PlaceView['find']> {
  const names = ({ material, label }: StoreRow) =>
    [material, label, `${material} ${label}`].map((name) => name.toLowerCase());
  return {
    label: 'Find a material in the Store',
    placeholder: 'Find a material',
    options: rows.map(({ material, label }) => `${material} ${label}`),
    go: (words) => {
      const wanted = words.toLowerCase();
      const found =
        rows.find((row) => names(row).includes(wanted)) ??
        rows.find((row) => names(row).some((name) => name.includes(wanted)));
      if (found) location.hash = writeRoute('store', found.material);
      return found !== undefined;
    },
  };
}
