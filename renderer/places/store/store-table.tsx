import type { BookContext } from '#renderer/books/book-api.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { CodedName } from '#renderer/kit/coded-name.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { goTo } from '#renderer/frame/go-to.ts';
import { goToBook } from '#renderer/frame/go-to-goods.ts';
import type { EntryMenu } from '#renderer/kit/context-menu.tsx';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { StoredGoods } from '#shared-calc/derive/store-goods.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { bestBeforeOf, clearOn, keptOf, isUnderLeast, pastBest } from './store-rows.ts';

interface TableParts {
  readonly rows: readonly StoredGoods[];
  readonly chosen: string | undefined;
  readonly context: BookContext;
}

/** What lies in the Store or is on order, a row for each kind of goods. */
export function StoreTable({ rows, chosen, context: { display, today, records } }: TableParts) {
  if (rows.length === 0) return <EmptyNote>The Store is empty. Put in what lies on the shelf.</EmptyNote>;
  const amount = (value: number, { unit }: StoredGoods) => (value > 1e-9 ? goodsWords(value, unit, display) : '');
  return (
    <Table
      look="ledger"
      label="The Store"
      onKeyDown={walkLinks}
      rows={rows}
      keyOf={({ of }) => of}
      menu={(row) => goodsMenu(row, records)}
      mark={({ of }) => (of === chosen ? 'here' : undefined)}
      columns={[
        { head: 'Goods', names: true, cell: (row) => <Goods row={row} isChosen={row.of === chosen} /> },
        { head: 'On hand', figure: true, cell: (row) => amount(row.now.onHand, row) || 'none' },
        { head: 'Free', figure: true, cell: (row) => <b>{amount(row.now.free, row) || 'none'}</b> },
        {
          head: 'Kept for',
          cell: (row) => [...keptOf(row)].map(([job, kept]) => `${job}: ${amount(kept, row)}`).join(', '),
        },
        { head: 'On order', figure: true, cell: (row) => amount(row.now.onOrder, row) },
        { head: 'In quarantine', cell: (row) => <Apart row={row} display={display} /> },
        { head: 'Best before', cell: (row) => <BestBefore row={row} today={today} display={display} /> },
        { head: 'Least', figure: true, cell: (row) => <Least row={row} display={display} /> },
      ]}
    />
  );
}

/** The places of goods: their lots, their book, and the orders that are to bring some. */
function goodsMenu({ of, label, lots }: StoredGoods, records: BookContext['records']): EntryMenu {
  const orders = new Set(lots.map(({ stock }) => stock.lot.came.order).filter((order) => order !== undefined));
  return {
    label: `${of} ${label}`,
    acts: [
      goTo('Its lots in the Store', 'store', of),
      ...goToBook(of, records),
      ...[...orders].map((order) => goTo(`Order ${order}`, 'orders', order)),
    ],
  };
}

interface CellParts {
  readonly row: StoredGoods;
  readonly display: BookContext['display'];
}

function Apart({ row, display }: CellParts) {
  const until = clearOn(row);
  if (until === undefined) return null;
  return (
    <>
      {goodsWords(row.now.quarantined, row.unit, display)} until {paperDay(until, display)}
    </>
  );
}

function BestBefore({ row, display, today }: CellParts & { readonly today: Day }) {
  const best = bestBeforeOf(row);
  const past = pastBest(row, today);
  return (
    <>
      {best !== undefined && paperDay(best, display)}
      {past > 1e-9 && (
        <Flag state="watch" sign="watch" after>
          {goodsWords(past, row.unit, display)} past it
        </Flag>
      )}
    </>
  );
}

function Least({ row, display }: CellParts) {
  return (
    <>
      {row.least !== undefined && goodsWords(row.least, row.unit, display)}
      {isUnderLeast(row) && (
        <Flag state="watch" sign="watch" after>
          under it
        </Flag>
      )}
    </>
  );
}

function Goods({ row, isChosen }: { readonly row: StoredGoods; readonly isChosen: boolean }) {
  return (
    <Link look="row" href={writeRoute('store', row.of)} open={isChosen}>
      <CodedName code={row.of} label={row.label} />
    </Link>
  );
}
