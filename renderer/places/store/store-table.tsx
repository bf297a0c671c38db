import type { BookContext } from '#renderer/books/book-hands.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Flag } from '#renderer/kit/flag.tsx';
import { walkLinks } from '#renderer/kit/walk-links.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import type { StoreRow } from './store-rows.ts';

interface TableParts {
  readonly rows: readonly StoreRow[];
  readonly chosen: string | undefined;
  readonly context: BookContext;
}

/** What lies in the Store, a material a row. */
export function StoreTable({ rows, chosen, context }: TableParts) {
  if (rows.length === 0) return <EmptyNote>The Store is empty. Put in what lies on the shelf.</EmptyNote>;
  return (
    <table class="ledger" onKeyDown={walkLinks}>
      <thead>
        <tr>
          <th scope="col">Material</th>
          <th scope="col" class="n">
            Sealed
          </th>
          <th scope="col" class="n">
            Opened
          </th>
          <th scope="col" class="n">
            Free
          </th>
          <th scope="col">Kept for</th>
          <th scope="col">In quarantine</th>
          <th scope="col">Best before</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <Row key={row.material} row={row} isChosen={row.material === chosen} context={context} />
        ))}
      </tbody>
    </table>
  );
}

interface RowParts {
  readonly row: StoreRow;
  readonly isChosen: boolean;
  readonly context: BookContext;
}

function Row({ row, isChosen, context: { display } }: RowParts) {
  const amount = (value: number) => (value > 1e-9 ? goodsWords(value, row.unit, display) : '');
  return (
    <tr class={isChosen ? 'here' : undefined}>
      <th scope="row">
        <a class="row-link" href={writeRoute('store', row.material)} aria-current={isChosen ? 'true' : undefined}>
          <span class="code">{row.material}</span> {row.label}
        </a>
      </th>
      <td class="n">{amount(row.sealed)}</td>
      <td class="n">{amount(row.opened)}</td>
      <td class="n strong">{amount(row.free) || 'none'}</td>
      <td>{row.kept.map((kept) => `${kept.job}: ${amount(kept.amount)}`).join(', ')}</td>
      <td>{amount(row.inQuarantine)}</td>
      <td>
        {row.bestBefore !== undefined && paperDay(row.bestBefore)}
        {row.pastBest > 1e-9 && (
          <Flag state="watch" sign="watch" after>
            {amount(row.pastBest)} past it
          </Flag>
        )}
      </td>
    </tr>
  );
}
