import type { Extent, Range, Spot } from '#renderer/bench/range.ts';
import { rectOf } from '#renderer/bench/range.ts';
import type { BookContext } from './book-hands.ts';
import type { BookColumn, BookRow, BookTable } from './book-table.ts';

/** A book as it lies open: its rows and columns in order. */
export interface BookLayout<Row extends BookRow> {
  readonly table: BookTable<Row>;
  readonly context: BookContext;
  readonly rows: readonly Row[];
  /** The first heads the row. */
  readonly columns: readonly BookColumn<Row>[];
}

/** One field of a row. */
export interface Box<Row> {
  readonly row: Row;
  readonly column: BookColumn<Row>;
}

export function layOut<Row extends BookRow>(table: BookTable<Row>, context: BookContext): BookLayout<Row> {
  return { table, context, rows: table.rows(context), columns: table.columns(context) };
}

export function extentOf<Row extends BookRow>({ rows, columns }: BookLayout<Row>): Extent {
  return { rows: rows.length, columns: columns.length, heads: [] };
}

export function boxAt<Row extends BookRow>({ rows, columns }: BookLayout<Row>, spot: Spot): Box<Row> | undefined {
  const row = rows[spot.row];
  const column = columns[spot.column];
  return row && column ? { row, column } : undefined;
}

/** Where a field stands now; without a column the first that can be written in. */
export function spotOf<Row extends BookRow>(
  { rows, columns }: BookLayout<Row>,
  id: string,
  key?: string,
): Spot | undefined {
  const row = rows.findIndex((each) => each.id === id);
  const column = key === undefined ? Math.min(1, columns.length - 1) : columns.findIndex((each) => each.key === key);
  return row < 0 || column < 0 ? undefined : { row, column };
}

/** Ids of the rows a range reaches over. */
export function rowsIn<Row extends BookRow>({ rows }: BookLayout<Row>, range: Range): readonly string[] {
  const { top, bottom } = rectOf(range);
  return rows.slice(top, bottom + 1).map(({ id }) => id);
}
