import type { CellKey, GridColumn, GridModel } from '#renderer/grid/grid-model.ts';
import type { TableView } from '#shared-calc/records/records.ts';
import { arrangedColumns, arrangedRows, type Arranged } from './arrange.ts';
import type { BookContext } from './book-api.ts';
import type { BookColumn, BookRow, Box, BookTable } from './book-table.ts';
import { fieldHelp } from './field-help.ts';
import { paintedField, type PaintedField } from './paint-field.ts';

export interface BookModel<Row extends BookRow> extends GridModel<PaintedField> {
  readonly columnOf: (key: string) => BookColumn<Row> | undefined;
  readonly boxAt: (at: CellKey) => Box<Row> | undefined;
  readonly arranged: Arranged<Row>;
}

/** A book as a model of the grid: a record a row, a field a column, as its view has them. */
export function bookModel<Row extends BookRow>(
  table: BookTable<Row>,
  context: BookContext,
  before?: Arranged<Row>,
): BookModel<Row> {
  const view = context.records.tableView.get(table.view);
  const all = table.columns(context);
  const columns = arrangedColumns(all, view);
  const { rows, hidden } = arrangedRows(table.rows(context), all, view, before);
  const rowOf = new Map(rows.map((row) => [row.id, row]));
  const columnOf = new Map([...all, ...columns].map((column) => [column.key, column]));
  const boxAt = (at: CellKey) => {
    const row = rowOf.get(at.row);
    const column = columnOf.get(at.column);
    return row && column ? { row, column } : undefined;
  };
  return {
    arranged: { view, rows, columns, hidden },
    columnOf: (key) => columnOf.get(key),
    boxAt,
    rows: rows.map(({ id }) => ({ key: id, looks: [] })),
    pinned: 0,
    stops: [],
    columns: columns.map((column) => gridColumn(column, view)),
    shownAt: (at) => paintedField(boxAt(at)),
    rowName: (row) => row,
    copied: (at) => {
      const box = boxAt(at);
      return box ? box.column.entry(box.row) : '';
    },
    entryAt: (at) => {
      const box = boxAt(at);
      return box && entryOf(box);
    },
  };
}

function gridColumn<Row>({ key, title, unit, width }: BookColumn<Row>, view: TableView | undefined): GridColumn {
  const { column, down = false } = view?.sort ?? {};
  return {
    key,
    title: unit === '' ? title : `${title}, ${unit}`,
    widthRem: width,
    sorted: column === key ? (down ? 'down' : 'up') : undefined,
    filtered: view?.filters.some((filter) => filter.column === key) ?? false,
  };
}

function entryOf<Row extends BookRow>(box: Box<Row>): ReturnType<GridModel<PaintedField>['entryAt']> {
  const { row, column } = box;
  if (!column.write) return { closed: column.closed ?? `${column.title} is not written here.` };
  return { text: column.entry(row), label: paintedField(box).spoken, help: fieldHelp(box) };
}
