import type { BenchRow, BenchView, BoxPlace } from './view-model.ts';
import type { Extent, Spot } from './range.ts';

/** Where each row and strip of a view stands, both ways. */
export interface Positions {
  readonly extent: Extent;
  readonly rowAt: (row: number) => BenchRow | undefined;
  /** The strip's key; `undefined` for the names. */
  readonly columnAt: (column: number) => string | undefined;
  /** Names of rows and keys of strips; an undefined column is the names. */
  readonly spotOf: (row: string, column: string | undefined) => Spot | undefined;
  /** The line's box at a spot, where there is one: not for names, section heads and the foot. */
  readonly boxAt: (spot: Spot) => BoxPlace | undefined;
}

export function positionsOf(view: BenchView): Positions {
  const rows: readonly BenchRow[] = [...view.rows, ...view.foot];
  const rowOf = new Map(rows.map((row, index) => [rowKey(row), index]));
  const columnOf = new Map(view.columns.map((column, index) => [column.key, index + 1]));
  const columnAt = (column: number) => view.columns[column - 1]?.key;
  return {
    extent: { rows: rows.length, columns: view.columns.length + 1, heads: headsOf(view) },
    rowAt: (row) => rows[row],
    columnAt,
    spotOf: (name, key) => {
      const row = rowOf.get(name);
      const column = key === undefined ? 0 : columnOf.get(key);
      return row === undefined || column === undefined ? undefined : { row, column };
    },
    boxAt: ({ row, column }) => {
      const line = rows[row];
      const key = columnAt(column);
      return line?.kind === 'line' && key !== undefined ? { row: line.id, column: key } : undefined;
    },
  };
}

/** A row's key among all rows: a section, a line and a sum may have one name. */
export function rowKey(row: BenchRow): string {
  return row.kind === 'line' ? row.id : `${row.kind} ${row.id}`;
}

function headsOf(view: BenchView): readonly number[] {
  const heads = view.rows.flatMap((row, index) => (row.kind === 'section' ? [index] : []));
  return view.foot.length > 0 ? [...heads, view.rows.length] : heads;
}
