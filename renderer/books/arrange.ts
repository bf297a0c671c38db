import type { TableView } from '#shared-calc/records/records.ts';
import type { BookColumn, BookRow } from './book-table.ts';

/** The rows and columns of a table as its view shows them. */
export interface Arranged<Row extends BookRow> {
  readonly view: TableView | undefined;
  readonly rows: readonly Row[];
  readonly columns: readonly BookColumn<Row>[];
  /** Left out by the filters. */
  readonly hidden: readonly Row[];
}

/** Columns in the order and widths of the view; the first heads the rows and stays. New ones follow in their own order. */
export function arrangedColumns<Row>(
  columns: readonly BookColumn<Row>[],
  view: TableView | undefined,
): readonly BookColumn<Row>[] {
  const [first, ...others] = columns;
  if (!view || !first) return columns;
  const shown = new Map(view.columns.map((column, at) => [column.key, { ...column, at }]));
  const placeOf = ({ key }: BookColumn<Row>, own: number) => shown.get(key)?.at ?? view.columns.length + own;
  const placed = others.map((column, own) => ({ column, at: placeOf(column, own) }));
  const inOrder = [first, ...placed.toSorted((one, other) => one.at - other.at).map(({ column }) => column)];
  return inOrder.flatMap((column) => {
    const { hidden = false, widthRem = column.width } = shown.get(column.key) ?? {};
    return hidden && column !== first ? [] : [{ ...column, width: widthRem }];
  });
}

/**
 * Rows that meet the filters, sorted. While the view stays the same they keep their places, so that a row does not go
 * from under the hand that writes in it; new rows come last.
 */
export function arrangedRows<Row extends BookRow>(
  rows: readonly Row[],
  columns: readonly BookColumn<Row>[],
  view: TableView | undefined,
  before?: Arranged<Row>,
): Pick<Arranged<Row>, 'rows' | 'hidden'> {
  if (!view || (!view.sort && view.filters.length === 0)) return { rows, hidden: [] };
  if (before && before.view === view) return keptPlaces(rows, before);
  const meets = (row: Row) => view.filters.every((filter) => meetsFilter(row, columns, filter));
  const shown = rows.filter(meets);
  return { rows: sorted(shown, columns, view.sort), hidden: rows.filter((row) => !meets(row)) };
}

function keptPlaces<Row extends BookRow>(
  rows: readonly Row[],
  before: Arranged<Row>,
): Pick<Arranged<Row>, 'rows' | 'hidden'> {
  const now = new Map(rows.map((row) => [row.id, row]));
  const still = (some: readonly Row[]) => some.flatMap(({ id }) => now.get(id) ?? []);
  const known = new Set([...before.rows, ...before.hidden].map(({ id }) => id));
  return { rows: [...still(before.rows), ...rows.filter(({ id }) => !known.has(id))], hidden: still(before.hidden) };
}

const words = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** Empty cells come last, up and down. Equal ones keep the book's own order. */
function sorted<Row>(
  rows: readonly Row[],
  columns: readonly BookColumn<Row>[],
  sort: TableView['sort'],
): readonly Row[] {
  const column = sort && columns.find(({ key }) => key === sort.column);
  if (!column) return rows;
  const turn = sort.down ? -1 : 1;
  return rows.toSorted((one, other) => {
    const [a, b] = [rankOf(column, one), rankOf(column, other)];
    if (a === undefined || b === undefined) return Number(a === undefined) - Number(b === undefined);
    return turn * (typeof a === 'number' && typeof b === 'number' ? a - b : words.compare(String(a), String(b)));
  });
}

/** What a cell is sorted by; `undefined` if it is empty. */
function rankOf<Row>({ rank, show }: BookColumn<Row>, row: Row): number | string | undefined {
  const value = rank ? rank(row) : show(row);
  return value === '' ? undefined : value;
}

type Filter = TableView['filters'][number];

function meetsFilter<Row>(row: Row, columns: readonly BookColumn<Row>[], filter: Filter): boolean {
  const column = columns.find(({ key }) => key === filter.column);
  // A filter on a column that is no longer there hides nothing.
  if (!column) return true;
  const shown = column.show(row);
  return hasWords(shown, filter) && isWithin(column.rank?.(row), filter);
}

function hasWords(shown: string, { has, among }: Filter): boolean {
  if (has !== undefined && !shown.toLowerCase().includes(has.toLowerCase())) return false;
  return among?.includes(shown) ?? true;
}

/** What is not known is not within any bounds. */
function isWithin(figure: unknown, { least, most }: Filter): boolean {
  if (least === undefined && most === undefined) return true;
  return typeof figure === 'number' && figure >= (least ?? -Infinity) && figure <= (most ?? Infinity);
}

/** "3 of 12 are hidden by the filter, 1 of them with a flag: old price"; `undefined` if none is. */
export function sayHidden<Row extends BookRow>({ rows, hidden, columns }: Arranged<Row>): string | undefined {
  if (hidden.length === 0) return undefined;
  const flags = hidden.map((row) => columns.flatMap((column) => column.flag?.(row)?.says ?? []));
  const flagged = flags.filter((says) => says.length > 0);
  const kinds = [...new Set(flagged.flat())].join(', ');
  const also = flagged.length === 0 ? '' : `, ${flagged.length} of them with a flag: ${kinds}`;
  return `${hidden.length} of ${rows.length + hidden.length} ${hidden.length === 1 ? 'is' : 'are'} hidden by the filter${also}`;
}
