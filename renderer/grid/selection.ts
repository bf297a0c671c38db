/** A cell by position: row from the top, pinned rows last; column 0 holds the row heads. */
export interface Cell {
  readonly row: number;
  readonly column: number;
}

/** From the cell where it began to the cell where it ends, with the ranges chosen before it, in their order. */
export interface Selection {
  readonly anchor: Cell;
  readonly tip: Cell;
  readonly others?: readonly Rect[];
  /** Arrows draw another range and leave the others. */
  readonly adding?: true;
}

export interface Rect {
  readonly top: number;
  readonly bottom: number;
  readonly left: number;
  readonly right: number;
}

export interface Extent {
  readonly rows: number;
  readonly columns: number;
  /** Rows where a jump up or down stops, ascending. */
  readonly stops: readonly number[];
}

export type Direction = 'up' | 'down' | 'left' | 'right';
export type Edge = 'row start' | 'row end' | 'first' | 'last';

export function single(cell: Cell): Selection {
  return { anchor: cell, tip: cell };
}

/** All that is chosen stays, and another range begins at the tip: the next arrow moves it. */
export function beginAnother(selection: Selection): Selection {
  return { ...single(selection.tip), others: rangesOf(selection), adding: true };
}

/** The selection with its tip at another cell: the last range drawn further, or begun there. */
export function tipAt(selection: Selection, tip: Cell, extend: boolean): Selection {
  if (extend) return { ...selection, tip };
  const { others, adding } = selection;
  return adding && others ? { ...single(tip), others, adding } : single(tip);
}

export function rectOf({ anchor, tip }: Selection): Rect {
  return {
    top: Math.min(anchor.row, tip.row),
    bottom: Math.max(anchor.row, tip.row),
    left: Math.min(anchor.column, tip.column),
    right: Math.max(anchor.column, tip.column),
  };
}

export function holds(rect: Rect, { row, column }: Cell): boolean {
  return row >= rect.top && row <= rect.bottom && column >= rect.left && column <= rect.right;
}

export function isSingle({ anchor, tip, others = [] }: Selection): boolean {
  return anchor.row === tip.row && anchor.column === tip.column && others.length === 0;
}

/** The selection, if the cell is the tip of several selected ones. */
export function rangeAround(selection: Selection | undefined, { row, column }: Cell): Selection | undefined {
  if (!selection || isSingle(selection)) return undefined;
  return selection.tip.row === row && selection.tip.column === column ? selection : undefined;
}

/** Every range of a selection, the one with the tip last, without those that lie in another. */
export function rangesOf(selection: Selection): readonly Rect[] {
  const { others = [] } = selection;
  const last = rectOf(selection);
  if (others.some((rect) => covers(rect, last))) return others;
  return [...others.filter((rect) => !covers(last, rect)), last];
}

function covers(wide: Rect, { top, bottom, left, right }: Rect): boolean {
  return holds(wide, { row: top, column: left }) && holds(wide, { row: bottom, column: right });
}

/** The selection with one more cell, from which a further range may be drawn; a cell chosen alone before is let go. */
export function addedTo(selection: Selection, cell: Cell): Selection {
  const { others = [] } = selection;
  const alone = (rect: Rect) => isCell(rect, cell);
  const ranges = [...others, rectOf(selection)];
  if (!ranges.some(alone)) return { ...single(cell), others: ranges };
  const kept = ranges.filter((rect) => !alone(rect));
  const last = kept.at(-1);
  if (!last) return selection;
  const rest = kept.slice(0, -1);
  const anchor = { row: last.top, column: last.left };
  return { anchor, tip: { row: last.bottom, column: last.right }, ...(rest.length > 0 && { others: rest }) };
}

function isCell({ top, bottom, left, right }: Rect, { row, column }: Cell): boolean {
  return top === row && bottom === row && left === column && right === column;
}

/** The rows, or the columns, of a selection from end to end; the row heads are not of them. The tip stays in sight. */
export function whole(extent: Extent, selection: Selection, of: 'rows' | 'columns'): Selection {
  const first = Math.min(1, extent.columns - 1);
  const all = { top: 0, bottom: extent.rows - 1, left: first, right: extent.columns - 1 };
  const others = rangesOf(selection).map(({ top, bottom, left, right }) =>
    of === 'rows' ? { ...all, top, bottom } : { ...all, left, right },
  );
  return { ...single(selection.tip), others };
}

export type Side = 'top' | 'bottom' | 'left' | 'right';

/** The sides of a cell where its selection ends; `undefined` outside the selection. */
export function edgesOf(ranges: readonly Rect[], cell: Cell): readonly Side[] | undefined {
  const inside = (row: number, column: number) => ranges.some((rect) => holds(rect, { row, column }));
  const { row, column } = cell;
  if (!inside(row, column)) return undefined;
  const beside: readonly (readonly [Side, boolean])[] = [
    ['top', inside(row - 1, column)],
    ['bottom', inside(row + 1, column)],
    ['left', inside(row, column - 1)],
    ['right', inside(row, column + 1)],
  ];
  return beside.flatMap(([side, more]) => (more ? [] : [side]));
}

/** The next cell; with `jump`, the next stop up or down, or the first or last column left or right. */
export function stepped(extent: Extent, cell: Cell, direction: Direction, jump: boolean): Cell {
  return clamped(extent, jump ? jumped(extent, cell, direction) : near(cell, direction));
}

/** First and last never mean the row heads: the left arrow reaches them. */
export function atEdge(extent: Extent, cell: Cell, edge: Edge): Cell {
  const last = extent.columns - 1;
  switch (edge) {
    case 'row start':
      return clamped(extent, { row: cell.row, column: 1 });
    case 'row end':
      return { row: cell.row, column: last };
    case 'first':
      return clamped(extent, { row: 0, column: 1 });
    case 'last':
      return { row: extent.rows - 1, column: last };
  }
}

/**
 * The cell Tab goes to: along the row, then the first of the next row; `undefined` past the last or before the first.
 */
export function tabbed(extent: Extent, cell: Cell, back: boolean): Cell | undefined {
  const last = extent.columns - 1;
  const column = cell.column + (back ? -1 : 1);
  if (column >= 1 && column <= last) return { row: cell.row, column };
  const row = cell.row + (back ? -1 : 1);
  if (row < 0 || row >= extent.rows) return undefined;
  return { row, column: back ? last : Math.min(1, last) };
}

/** The selection clipped to the cells there are. */
export function within(extent: Extent, selection: Selection): Selection {
  const { anchor, tip, others = [] } = selection;
  const kept = others.flatMap((rect) => clippedRect(extent, rect) ?? []);
  return {
    anchor: clamped(extent, anchor),
    tip: clamped(extent, tip),
    ...(kept.length > 0 && { others: kept }),
    ...(kept.length > 0 && selection.adding && { adding: true }),
  };
}

function clippedRect({ rows, columns }: Extent, { top, bottom, left, right }: Rect): Rect | undefined {
  if (top >= rows || left >= columns) return undefined;
  return { top, left, bottom: Math.min(bottom, rows - 1), right: Math.min(right, columns - 1) };
}

function clamped({ rows, columns }: Extent, { row, column }: Cell): Cell {
  return { row: between(row, rows - 1), column: between(column, columns - 1) };
}

function between(position: number, last: number): number {
  return Math.max(0, Math.min(position, last));
}

function near({ row, column }: Cell, direction: Direction): Cell {
  switch (direction) {
    case 'up':
      return { row: row - 1, column };
    case 'down':
      return { row: row + 1, column };
    case 'left':
      return { row, column: column - 1 };
    case 'right':
      return { row, column: column + 1 };
  }
}

function jumped({ rows, columns, stops }: Extent, { row, column }: Cell, direction: Direction): Cell {
  switch (direction) {
    case 'up':
      return { row: stops.findLast((stop) => stop < row) ?? 0, column };
    case 'down':
      return { row: stops.find((stop) => stop > row) ?? rows - 1, column };
    case 'left':
      return { row, column: column > 1 ? 1 : 0 };
    case 'right':
      return { row, column: columns - 1 };
  }
}
