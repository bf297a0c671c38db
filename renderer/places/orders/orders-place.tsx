import { actNames } from '#shared-calc/words/act-names.ts';
import { signal, type Signal } from '@preact/signals';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';
import { PaintedPaper } from '#renderer/print/painted-paper.tsx';
import { printAct } from '#renderer/print/print-acts.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import { isOpenOrder, orderStanding, type OrderStanding } from '#shared-calc/buy/order-standing.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import { orderCsv } from '#shared-calc/papers/order-csv.ts';
import { comingIn, orderDocument } from '#shared-calc/papers/order-paper.ts';
import { supplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import type { AskedOfOrders } from './asked-of-orders.ts';
import { NewOrderDialog } from './new-order-dialog.tsx';
import { OrderPanel } from './order-panel.tsx';
import { OrdersTable } from './orders-table.tsx';
import { ReceiveDialog } from './receive-dialog.tsx';

/** The orders to suppliers, and beside them the selected one; `#/orders/O-0001`, as a paper `#/orders/O-0001/paper`. */
export function ordersPlace(api: JobApi): (route: Route) => PlaceView {
  const asked = signal<AskedOfOrders>(undefined);
  return ({ rest: [id, view] }) => {
    const context = contextNow(api);
    const all = standingOrders(context);
    const chosen = all.find(({ order }) => order.id === id);
    if (chosen && view === 'paper') return paperView(chosen, context);
    return {
      about: '',
      aside: sayOrders(all),
      acts: [{ label: actNames.orderForStore, run: () => (asked.value = { is: 'new' }) }],
      work: (
        <ScrollPage label="Orders">
          <OrdersTable orders={all} chosen={id} context={context} />
          <AskedDialog asked={asked} orders={all} api={api} />
        </ScrollPage>
      ),
      sidePanel: <OrderPanel standing={chosen} context={context} api={api} asked={asked} />,
      find: findIn(all, context),
    };
  };
}

/** Those that are still to come first, the first due first; then the others, the last placed first. */
function standingOrders({ records, today }: BookContext): readonly OrderStanding[] {
  const all = [...records.order.values()].map((order) => orderStanding(records, order, today)).toReversed();
  const open = all.filter(isOpenOrder).toSorted((one, other) => (one.due < other.due ? -1 : 1));
  return [...open, ...all.filter((each) => !isOpenOrder(each))];
}

/** `5 open, 1 late` */
function sayOrders(all: readonly OrderStanding[]): string {
  const open = all.filter(isOpenOrder).length;
  const late = all.filter(({ lateDays }) => lateDays > 0).length;
  return late > 0 ? `${open} open, ${late} late` : `${open} open`;
}

interface AskedParts {
  readonly asked: Signal<AskedOfOrders>;
  readonly orders: readonly OrderStanding[];
  readonly api: JobApi;
}

function AskedDialog({ asked, orders, api }: AskedParts) {
  const now = asked.value;
  const close = () => (asked.value = undefined);
  if (now?.is === 'new') return <NewOrderDialog api={api} close={close} />;
  const standing = orders.find(({ order }) => order.id === now?.order);
  return standing ? <ReceiveDialog standing={standing} api={api} close={close} /> : null;
}

function paperView({ order }: OrderStanding, { records, workshop, display }: BookContext): PlaceView {
  const printed = supplierOrder(order, records);
  const sent = orderDocument(printed, display);
  const blocks = [...sent.blocks, ...comingIn(records, [order])];
  return {
    about: order.id,
    aside: printed.name,
    acts: [
      { label: 'Back to the orders', run: () => (location.hash = writeRoute('orders', order.id)) },
      { label: actNames.saveCsv, run: () => downloadCsv(`order ${order.id}`, orderCsv(printed, workshop)) },
      printAct(window),
    ],
    work: (
      <ScrollPage look="paper" label="Paper">
        <PaintedPaper document={{ title: sent.title, blocks }} letterhead={letterheadOf(workshop)} />
      </ScrollPage>
    ),
  };
}

function findIn(all: readonly OrderStanding[], { records }: BookContext): NonNullable<PlaceView['find']> {
  const named = all.map(({ order }) => ({
    id: order.id,
    name: `${order.id} ${records.supplier.get(order.supplier)?.name ?? ''}`,
  }));
  return {
    label: 'Find an order',
    placeholder: 'Find an order',
    options: named.map(({ name }) => name),
    go: (words) => {
      const wanted = words.toLowerCase();
      const found = named.find(({ name }) => name.toLowerCase().includes(wanted));
      if (found) location.hash = writeRoute('orders', found.id);
      return found !== undefined;
    },
  };
}
