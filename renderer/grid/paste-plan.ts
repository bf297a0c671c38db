import type { Extent, Rect, Cell } from './selection.ts';

export interface PlannedText extends Cell {
  readonly text: string;
}

export interface PastePlan {
  readonly texts: readonly PlannedText[];
  /** Rows and columns of the block that lie past the edge. */
  readonly left: { readonly rows: number; readonly columns: number };
}

/**
 * Where pasted texts go. One text fills the whole selection. A block goes down and right from the selection's first
 * cell, and is repeated if the selection is a whole number of blocks. Texts past the edge are left and counted.
 */
export function pastePlan(block: readonly (readonly string[])[], rect: Rect, extent: Extent): PastePlan {
  const height = block.length;
  const width = Math.max(0, ...block.map((row) => row.length));
  if (height === 0 || width === 0) return { texts: [], left: { rows: 0, columns: 0 } };
  const rows = repeats(rect.bottom - rect.top + 1, height);
  const columns = repeats(rect.right - rect.left + 1, width);
  const wanted = { rows: rect.top + rows * height, columns: rect.left + columns * width };
  const covered = {
    ...rect,
    bottom: Math.min(wanted.rows, extent.rows) - 1,
    right: Math.min(wanted.columns, extent.columns) - 1,
  };
  const texts = cellsIn(covered).flatMap(({ row, column }) => {
    const text = block[(row - rect.top) % height]?.[(column - rect.left) % width];
    return text === undefined ? [] : [{ row, column, text }];
  });
  const left = {
    rows: Math.max(0, wanted.rows - extent.rows),
    columns: Math.max(0, wanted.columns - extent.columns),
  };
  return { texts, left };
}

export interface FillParts {
  readonly to: 'right' | 'down';
  /** A selection of one column is filled from the cell at its left. */
  readonly fromBeside: boolean;
  readonly textOf: (cell: Cell) => string;
}

/**
 * Copies each row's first cell over the rest of its row, or each column's over the rest of its column. Row heads fill
 * nothing.
 */
export function fillPlan(rect: Rect, { to, fromBeside, textOf }: FillParts): readonly PlannedText[] {
  const { top, left, bottom, right } = rect;
  if (to === 'down')
    return cellsIn({ ...rect, top: top + 1 }).map((cell) => ({ ...cell, text: textOf({ ...cell, row: top }) }));
  const from = fromBeside && left === right ? left - 1 : left;
  if (from < 1) return [];
  const rest = { top, bottom, left: from + 1, right };
  return cellsIn(rest).map((cell) => ({ ...cell, text: textOf({ ...cell, column: from }) }));
}

/** What of a pasted block did not fit, in a sentence; `undefined` if all of it did. */
export function sayLeft({ rows, columns }: PastePlan['left']): string | undefined {
  const parts = [counted(rows, 'row'), counted(columns, 'column')].filter((part) => part !== '');
  if (parts.length === 0) return undefined;
  return `${parts.join(' and ')} of what was pasted ${rows + columns === 1 ? 'does' : 'do'} not fit here.`;
}

function counted(count: number, what: string): string {
  if (count === 0) return '';
  return count === 1 ? `1 ${what}` : `${count} ${what}s`;
}

/** Cells of several ranges, each once. */
export function cellsOfRanges(ranges: readonly Rect[]): readonly Cell[] {
  const cells = ranges.flatMap(cellsIn);
  if (ranges.length === 1) return cells;
  return [...new Map(cells.map((cell) => [`${cell.row} ${cell.column}`, cell])).values()];
}

/** Cells of a rectangle, row by row. */
export function cellsIn({ top, left, bottom, right }: Rect): readonly Cell[] {
  const columns = Array.from({ length: Math.max(0, right - left + 1) }, (_, at) => left + at);
  const rows = Array.from({ length: Math.max(0, bottom - top + 1) }, (_, at) => top + at);
  return rows.flatMap((row) => columns.map((column) => ({ row, column })));
}

/** How often a block repeats along a selection: once, unless it fits a whole number of times. */
function repeats(selection: number, block: number): number {
  return selection % block === 0 ? selection / block : 1;
}
