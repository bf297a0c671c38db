import type { BookContext } from '#renderer/books/book-api.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Muted } from '#renderer/kit/muted.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { goTo } from '#renderer/frame/go-to.ts';
import type { EntryMenu } from '#renderer/kit/context-menu.tsx';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import { isLineIn, isOpenOrder, type OrderStanding } from '#shared-calc/buy/order-standing.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { jobsOf } from '#shared-calc/papers/supplier-orders.ts';
import { sayDays } from '#shared-calc/prepare/say-day.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import css from './orders.module.css';

interface TableParts {
  readonly orders: readonly OrderStanding[];
  readonly chosen: string | undefined;
  readonly context: BookContext;
}

/** Orders with their state and what is in; what is still to come of them all stands at the foot. */
export function OrdersTable({ orders, chosen, context: { records, workshop, display } }: TableParts) {
  if (orders.length === 0)
    return (
      <EmptyNote>
        Nothing is ordered. Orders are placed from the <Link href={writeRoute('run')}>shopping run</Link>, or here for
        the store.
      </EmptyNote>
    );
  const money = (coins: number) => showCoins(coins, workshop);
  const open = orders.filter(isOpenOrder);
  const sum = (of: (each: OrderStanding) => number) => money(open.reduce((all, each) => all + of(each), 0));
  return (
    <Table
      look="ledger"
      label="Orders"
      onKeyDown={walkLinks}
      rows={orders}
      keyOf={({ order }) => order.id}
      mark={(each) => markOf(each, chosen)}
      menu={orderMenu}
      foot={[
        { cells: [{ span: 6, says: `Asked, of ${open.length} open` }, sum((each) => each.goodsCoins), ''] },
        { cells: [{ span: 6, says: 'Paid for what is in of them' }, sum((each) => each.paidCoins), ''] },
        { cells: [{ span: 6, says: 'Still to come' }, sum((each) => each.openCoins), ''], sum: true },
      ]}
      columns={[
        { head: 'Order', names: true, cell: ({ order }) => <OrderLink id={order.id} isChosen={order.id === chosen} /> },
        { head: 'Supplier', cell: ({ order }) => records.supplier.get(order.supplier)?.name ?? order.supplier },
        { head: 'For', cell: ({ order }) => jobsOf(order.lines).join(', ') || 'store' },
        { head: 'Placed', cell: ({ order }) => paperDay(order.on, display) },
        { head: 'Due', cell: ({ due }) => paperDay(due, display) },
        { head: 'Lines in', cell: (standing) => <LinesIn standing={standing} /> },
        { head: `Asked, ${workshop.currency}`, figure: true, cell: ({ goodsCoins }) => money(goodsCoins) },
        { head: 'State', cell: (standing) => <State standing={standing} /> },
      ]}
    />
  );
}

/** The places of an order. */
function orderMenu({ order: { id, supplier, lines } }: OrderStanding): EntryMenu {
  return {
    label: `Order ${id}`,
    acts: [
      goTo('Open the order', 'orders', id),
      goTo('Its supplier', 'rate-book', 'suppliers', supplier),
      ...jobsOf(lines).map((job) => goTo(`Job ${job}`, 'jobs', job)),
    ],
  };
}

function markOf(standing: OrderStanding, chosen: string | undefined): 'here' | 'past' | undefined {
  if (standing.order.id === chosen) return 'here';
  return isOpenOrder(standing) ? undefined : 'past';
}

function OrderLink({ id, isChosen }: { readonly id: string; readonly isChosen: boolean }) {
  return (
    <Link look="row" href={writeRoute('orders', id)} open={isChosen}>
      <span class={css['number']}>{id}</span>
    </Link>
  );
}

function LinesIn({ standing: { lines } }: { readonly standing: OrderStanding }) {
  return (
    <>
      <span class={css['inBar']} aria-hidden="true">
        {lines.slice(0, MOST_BARS).map(({ line, came: packs }) => (
          <i key={line.n} data-state={packs > 0 ? 'came' : undefined} />
        ))}
      </span>
      {lines.filter(isLineIn).length} of {lines.length}
    </>
  );
}

/** More would not fit beside their count. */
const MOST_BARS = 12;

/** The state of an order, and how late it is. */
function State({ standing: { state, lateDays } }: { readonly standing: OrderStanding }) {
  if (lateDays > 0)
    return (
      <Flag state="stop" sign="stop">
        {state}, {sayDays(lateDays)} late
      </Flag>
    );
  if (state === 'part in')
    return (
      <Flag state="watch" sign="wait">
        part in
      </Flag>
    );
  return state === 'open' ? <span>open</span> : <Muted>{state}</Muted>;
}
