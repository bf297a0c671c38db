import type { ReadonlySignal, Signal } from '@preact/signals';
import { Button } from '#renderer/kit/button.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import { sayHidden, type Arranged } from './arrange.ts';
import type { BookContext } from './book-api.ts';
import type { BookRow, BookTable } from './book-table.ts';
import { FilterDialog } from './filter-dialog.tsx';
import type { ViewActs } from './view-acts.ts';
import css from './book.module.css';

interface HiddenParts<Row extends BookRow> {
  readonly arranged: ReadonlySignal<Arranged<Row> | undefined>;
  readonly showAll: () => void;
}

/** Never hides a row without saying so. */
export function HiddenRows<Row extends BookRow>({ arranged, showAll }: HiddenParts<Row>) {
  const says = arranged.value && sayHidden(arranged.value);
  if (says === undefined) return null;
  return (
    <p class={css['hidden']} role="status">
      {says}. <Button onClick={showAll}>{actNames.showAll}</Button>
    </p>
  );
}

interface FilteringParts<Row extends BookRow> {
  readonly table: BookTable<Row>;
  readonly context: BookContext;
  readonly column: Signal<string | undefined>;
  readonly take: ViewActs['filter'];
}

export function Filtering<Row extends BookRow>({ table, context, column, take }: FilteringParts<Row>) {
  const asked = table.columns(context).find(({ key }) => key === column.value);
  if (!asked) return null;
  const now = context.records.tableView.get(table.view)?.filters.find((filter) => filter.column === asked.key);
  const close = () => (column.value = undefined);
  return <FilterDialog column={asked} rows={table.rows(context)} now={now} take={take} close={close} />;
}
