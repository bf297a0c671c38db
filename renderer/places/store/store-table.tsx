import type { BookContext } from '#renderer/books/book-api.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { CodedName } from '#renderer/kit/coded-name.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import type { StoreRow } from './store-rows.ts';

interface TableParts {
  readonly rows: readonly StoreRow[];
  readonly chosen: string | undefined;
  readonly context: BookContext;
}

/** The stock of the Store, a material a row. */
export function StoreTable({ rows, chosen, context: { display } }: TableParts) {
  if (rows.length === 0) return <EmptyNote>The Store is empty. Put in what lies on the shelf.</EmptyNote>;
  const amount = (value: number, { unit }: StoreRow) => (value > 1e-9 ? goodsWords(value, unit, display) : '');
  return (
    <Table
      look="ledger"
      label="The Store"
      onKeyDown={walkLinks}
      rows={rows}
      keyOf={({ material }) => material}
      mark={({ material }) => (material === chosen ? 'here' : undefined)}
      columns={[
        { head: 'Material', names: true, cell: (row) => <Material row={row} isChosen={row.material === chosen} /> },
        { head: 'Sealed', figure: true, cell: (row) => amount(row.sealed, row) },
        { head: 'Opened', figure: true, cell: (row) => amount(row.opened, row) },
        { head: 'Free', figure: true, cell: (row) => <b>{amount(row.free, row) || 'none'}</b> },
        {
          head: 'Kept for',
          cell: (row) => row.kept.map((kept) => `${kept.job}: ${amount(kept.amount, row)}`).join(', '),
        },
        { head: 'In quarantine', cell: (row) => amount(row.inQuarantine, row) },
        {
          head: 'Best before',
          cell: (row) => (
            <>
              {row.bestBefore !== undefined && paperDay(row.bestBefore)}
              {row.pastBest > 1e-9 && (
                <Flag state="watch" sign="watch" after>
                  {amount(row.pastBest, row)} past it
                </Flag>
              )}
            </>
          ),
        },
      ]}
    />
  );
}

function Material({ row, isChosen }: { readonly row: StoreRow; readonly isChosen: boolean }) {
  return (
    <Link look="row" href={writeRoute('store', row.material)} open={isChosen}>
      <CodedName code={row.material} label={row.label} />
    </Link>
  );
}
