/** A place on the grid by position: row from the top with the foot last, column 0 the names. */
export interface Spot {
  readonly row: number;
  readonly column: number;
}

/** From where it was begun to where it was drawn. */
export interface Range {
  readonly anchor: Spot;
  readonly tip: Spot;
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
  /** Rows that head a section, rising; a jump up or down stops there, and at the first row of the foot. */
  readonly heads: readonly number[];
}

export type Direction = 'up' | 'down' | 'left' | 'right';
export type Edge = 'row start' | 'row end' | 'first' | 'last';

export function single(spot: Spot): Range {
  return { anchor: spot, tip: spot };
}

export function rectOf({ anchor, tip }: Range): Rect {
  return {
    top: Math.min(anchor.row, tip.row),
    bottom: Math.max(anchor.row, tip.row),
    left: Math.min(anchor.column, tip.column),
    right: Math.max(anchor.column, tip.column),
  };
}

export function holds(rect: Rect, { row, column }: Spot): boolean {
  return row >= rect.top && row <= rect.bottom && column >= rect.left && column <= rect.right;
}

export function isSingle({ anchor, tip }: Range): boolean {
  return anchor.row === tip.row && anchor.column === tip.column;
}

/** One box on, or with `jump` to the next section up or down, the first or last size left or right. */
export function stepped(extent: Extent, spot: Spot, direction: Direction, jump: boolean): Spot {
  return clamped(extent, jump ? jumped(extent, spot, direction) : near(spot, direction));
}

/** First and last mean boxes: the names are reached with the left arrow. */
export function atEdge(extent: Extent, spot: Spot, edge: Edge): Spot {
  const last = extent.columns - 1;
  switch (edge) {
    case 'row start':
      return clamped(extent, { row: spot.row, column: 1 });
    case 'row end':
      return { row: spot.row, column: last };
    case 'first':
      return clamped(extent, { row: 0, column: 1 });
    case 'last':
      return { row: extent.rows - 1, column: last };
  }
}

/** The box Tab goes to: along the row, then the next row's first; `undefined` past the last or before the first. */
export function tabbed(extent: Extent, spot: Spot, back: boolean): Spot | undefined {
  const last = extent.columns - 1;
  const column = spot.column + (back ? -1 : 1);
  if (column >= 1 && column <= last) return { row: spot.row, column };
  const row = spot.row + (back ? -1 : 1);
  if (row < 0 || row >= extent.rows) return undefined;
  return { row, column: back ? last : Math.min(1, last) };
}

/** The range after what was there has gone or come: kept within the grid. */
export function kept(extent: Extent, range: Range): Range {
  return { anchor: clamped(extent, range.anchor), tip: clamped(extent, range.tip) };
}

function clamped({ rows, columns }: Extent, { row, column }: Spot): Spot {
  return { row: between(row, rows - 1), column: between(column, columns - 1) };
}

function between(position: number, last: number): number {
  return Math.max(0, Math.min(position, last));
}

function near({ row, column }: Spot, direction: Direction): Spot {
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

function jumped({ rows, columns, heads }: Extent, { row, column }: Spot, direction: Direction): Spot {
  switch (direction) {
    case 'up':
      return { row: heads.findLast((head) => head < row) ?? 0, column };
    case 'down':
      return { row: heads.find((head) => head > row) ?? rows - 1, column };
    case 'left':
      return { row, column: column > 1 ? 1 : 0 };
    case 'right':
      return { row, column: columns - 1 };
  }
}
