import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { Cell, Extent, Selection } from './selection.ts';

/** A cell by the keys of its row and column, which it keeps when others come and go. */
export interface CellKey {
  readonly row: string;
  readonly column: string;
}

export interface CellText extends CellKey {
  readonly text: string;
}

export interface GridRow {
  readonly key: string;
  /** Classes of the row; it is drawn anew when they change. */
  readonly looks: readonly string[];
}

/** Keys and titles of columns; the first heads each row. */
export interface GridColumn {
  readonly key: string;
  readonly title: string;
}

/** What a grid shows at one moment. `Shown` is what one cell shows, as plain data. */
export interface GridModel<Shown> {
  readonly rows: readonly GridRow[];
  /** So many of the rows, the last, stay in sight at the foot. */
  readonly pinned: number;
  /** Rows where a jump up or down stops, rising. */
  readonly stops: readonly number[];
  readonly columns: readonly GridColumn[];
  readonly shownAt: (at: CellKey) => Shown;
  /** What is copied of a cell. */
  readonly copied: (at: CellKey) => string;
  /** What opens over a cell, or why nothing does; `undefined` where there is nothing to write in. */
  readonly entryAt: (at: CellKey) => CellEntry | { readonly closed: string } | undefined;
}

/** What the editor opens with. */
export interface CellEntry {
  readonly text: string;
  readonly label: string;
  readonly help: RuleHelp;
}

/** The grid's own name of the first column; the mouse selects nothing across it. */
export const headColumn = 'names';

export function columnId(index: number, key: string): string {
  return index === 0 ? headColumn : `column ${key}`;
}

/** Where each row and column of a model stands, both ways. */
export interface GridIndex {
  readonly extent: Extent;
  readonly keyOf: (cell: Cell) => CellKey | undefined;
  readonly cellOf: (at: CellKey) => Cell | undefined;
}

export function gridIndex({ rows, columns, stops }: Omit<GridModel<unknown>, 'shownAt'>): GridIndex {
  const rowOf = new Map(rows.map(({ key }, index) => [key, index]));
  const columnOf = new Map(columns.map(({ key }, index) => [key, index]));
  return {
    extent: { rows: rows.length, columns: columns.length, stops },
    keyOf: (cell) => {
      const row = rows[cell.row];
      const column = columns[cell.column];
      return row && column && { row: row.key, column: column.key };
    },
    cellOf: (at) => {
      const row = rowOf.get(at.row);
      const column = columnOf.get(at.column);
      return row === undefined || column === undefined ? undefined : { row, column };
    },
  };
}

/** Where a selection stands once rows or columns have moved; `undefined` where its tip has gone. */
export function movedSelection({ anchor, tip }: Selection, before: GridIndex, now: GridIndex): Selection | undefined {
  const moved = (cell: Cell) => {
    const key = before.keyOf(cell);
    return key && now.cellOf(key);
  };
  const end = moved(tip);
  return end && { anchor: moved(anchor) ?? end, tip: end };
}
