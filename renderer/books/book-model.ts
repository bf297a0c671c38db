import type { CellKey, GridModel } from '#renderer/grid/grid-model.ts';
import type { BookContext } from './book-api.ts';
import type { BookColumn, BookRow, Box, BookTable } from './book-table.ts';
import { fieldHelp } from './field-help.ts';
import { paintedField, type PaintedField } from './paint-field.ts';

export interface BookModel<Row extends BookRow> extends GridModel<PaintedField> {
  readonly columnOf: (key: string) => BookColumn<Row> | undefined;
  readonly boxAt: (at: CellKey) => Box<Row> | undefined;
}

/** A book as a model of the grid: a record a row, a field a column. */
export function bookModel<Row extends BookRow>(table: BookTable<Row>, context: BookContext): BookModel<Row> {
  const rows = table.rows(context);
  const columns = table.columns(context);
  const rowOf = new Map(rows.map((row) => [row.id, row]));
  const columnOf = new Map(columns.map((column) => [column.key, column]));
  const boxAt = (at: CellKey) => {
    const row = rowOf.get(at.row);
    const column = columnOf.get(at.column);
    return row && column ? { row, column } : undefined;
  };
  return {
    columnOf: (key) => columnOf.get(key),
    boxAt,
    rows: rows.map(({ id }) => ({ key: id, looks: [] })),
    pinned: 0,
    stops: [],
    columns: columns.map(({ key, title, unit }) => ({ key, title: unit === '' ? title : `${title}, ${unit}` })),
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

function entryOf<Row extends BookRow>(box: Box<Row>): ReturnType<GridModel<PaintedField>['entryAt']> {
  const { row, column } = box;
  if (!column.write) return { closed: column.closed ?? `${column.title} is not written here.` };
  return { text: column.entry(row), label: paintedField(box).spoken, help: fieldHelp(box) };
}
