import type { TableView } from '#shared-calc/records/records.ts';
import type { BookColumn } from './book-table.ts';

type Columns = readonly BookColumn<never>[];
type Filter = TableView['filters'][number];

/** Widths that a column can have, in rem. */
const NARROWEST = 3;
const WIDEST = 60;

export function freshView(id: string): TableView {
  return { id, columns: [], filters: [] };
}

/** Pressed once a heading sorts upwards, twice downwards, and the third time the book's own order comes back. */
export function nextSort(view: TableView, column: string): TableView {
  if (view.sort?.column !== column) return sortedBy(view, { column, down: false });
  return sortedBy(view, view.sort.down ? undefined : { column, down: true });
}

export function sortedBy({ id, columns, filters }: TableView, sort: TableView['sort']): TableView {
  return { id, columns, filters, ...(sort && { sort }) };
}

/** One filter a column; one that asks nothing takes it away. */
export function filteredBy(view: TableView, filter: Filter): TableView {
  const others = view.filters.filter(({ column }) => column !== filter.column);
  const asksNothing = Object.keys(filter).length === 1;
  return { ...view, filters: asksNothing ? others : [...others, filter] };
}

export function unfiltered(view: TableView): TableView {
  return { ...view, filters: [] };
}

export function withWidth(view: TableView, columns: Columns, key: string, widthRem: number | undefined): TableView {
  const width = widthRem === undefined ? undefined : Math.min(WIDEST, Math.max(NARROWEST, roundedRem(widthRem)));
  return changed(view, columns, key, ({ hidden = false }) => columnOf({ key, hidden, widthRem: width }));
}

/** To a hundredth: a pixel is more. */
function roundedRem(rem: number): number {
  return Math.round(rem * 100) / 100;
}

export function withHidden(view: TableView, columns: Columns, key: string, hidden: boolean): TableView {
  return changed(view, columns, key, ({ widthRem }) => columnOf({ key, hidden, widthRem }));
}

interface Shape {
  readonly key: string;
  readonly hidden: boolean;
  readonly widthRem: number | undefined;
}

function columnOf({ key, hidden, widthRem }: Shape): TableView['columns'][number] {
  return { key, ...(hidden && { hidden }), ...(widthRem !== undefined && { widthRem }) };
}

/** The shown columns in this order; hidden ones keep their places after the one before them. */
export function inOrder(view: TableView, columns: Columns, keys: readonly string[]): TableView {
  const all = named(view, columns);
  const byKey = new Map(all.map((column) => [column.key, column]));
  const moved = keys.values();
  const places = all.map((column) => (keys.includes(column.key) ? byKey.get(moved.next().value ?? '') : column));
  return { ...view, columns: places.filter((column) => column !== undefined) };
}

/** A column one place to the left or right among those that are shown. */
export function movedBy(view: TableView, columns: Columns, key: string, by: 1 | -1): TableView {
  const shown = named(view, columns).flatMap((column) => (column.hidden === true ? [] : [column.key]));
  const at = shown.indexOf(key);
  const other = shown[at + by];
  if (at < 0 || other === undefined) return view;
  return inOrder(
    view,
    columns,
    shown.map((each) => (each === key ? other : each === other ? key : each)),
  );
}

function changed(
  view: TableView,
  columns: Columns,
  key: string,
  change: (column: TableView['columns'][number]) => TableView['columns'][number],
): TableView {
  return { ...view, columns: named(view, columns).map((column) => (column.key === key ? change(column) : column)) };
}

/** Every column of the table but its first, by name, in the order of the view. */
function named(view: TableView, [, ...columns]: Columns): TableView['columns'] {
  const known = new Set(view.columns.map(({ key }) => key));
  const own = new Set(columns.map(({ key }) => key));
  const kept = view.columns.filter(({ key }) => own.has(key));
  return [...kept, ...columns.flatMap(({ key }) => (known.has(key) ? [] : [{ key }]))];
}
