import type { RuleHelp } from '#renderer/writing/rule-help.ts';
import type { Cell, Extent, Selection } from './selection.ts';

/** A cell by the keys of its row and column; it stays valid when others are added or removed. */
export interface CellKey {
  readonly row: string;
  readonly column: string;
}

export interface CellText extends CellKey {
  readonly text: string;
}

export interface GridRow {
  readonly key: string;
  /** Looks of the row; it is redrawn when they change. */
  readonly looks: readonly string[];
}

/** Keys and titles of columns; the first column holds the row heads. */
export interface GridColumn {
  readonly key: string;
  readonly title: string;
  readonly widthRem?: number;
  readonly sorted?: 'up' | 'down' | undefined;
  readonly filtered?: boolean;
}

/** What a grid shows at one moment. `Shown` is the content of one cell, as plain data. */
export interface GridModel<Shown> {
  readonly rows: readonly GridRow[];
  /** This many rows, the last ones, stay visible in the foot. */
  readonly pinned: number;
  /** Rows where a jump up or down stops, ascending. */
  readonly stops: readonly number[];
  readonly columns: readonly GridColumn[];
  readonly shownAt: (at: CellKey) => Shown;
  /** The name of a row with its unit, beside copied cells: `Litter depth, mm`. */
  readonly rowName: (row: string) => string;
  /** The text that is copied from a cell. */
  readonly copied: (at: CellKey) => string;
  /** What the editor opens with, or why the cell is closed; `undefined` if there is nothing to edit. */
  readonly entryAt: (at: CellKey) => CellEntry | { readonly closed: string } | undefined;
}

/** The text the editor opens with. */
export interface CellEntry {
  readonly text: string;
  readonly label: string;
  readonly help: RuleHelp;
}

/** The library's id of the first column; the mouse does not select across it. */
export const headColumn = 'names';

export function columnId(index: number, key: string): string {
  return index === 0 ? headColumn : `column ${key}`;
}

/** Positions of the rows and columns of a model, in both directions. */
export interface GridIndex {
  readonly extent: Extent;
  readonly keyOf: (cell: Cell) => CellKey | undefined;
  readonly cellOf: (at: CellKey) => Cell | undefined;
}

export function gridIndex({ rows, columns, stops }: Pick<GridModel<unknown>, 'rows' | 'columns' | 'stops'>): GridIndex {
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

/** The position of a selection after rows or columns have moved, its last range alone; `undefined` if its tip is gone. */
export function movedSelection({ anchor, tip }: Selection, before: GridIndex, now: GridIndex): Selection | undefined {
  const moved = (cell: Cell) => {
    const key = before.keyOf(cell);
    return key && now.cellOf(key);
  };
  const end = moved(tip);
  return end && { anchor: moved(anchor) ?? end, tip: end };
}
