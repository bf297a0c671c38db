import { rowKey } from './bench-positions.ts';
import type { Positions } from './bench-positions.ts';
import type { Range, Spot } from './range.ts';

interface SpotName {
  readonly row: string;
  readonly column: string | undefined;
}

export interface RangeNames {
  readonly anchor: SpotName;
  readonly tip: SpotName;
}

/** A range by names, so that it stays on its boxes when rows come and go. */
export function namesOf(positions: Positions, { anchor, tip }: Range): RangeNames {
  const name = ({ row, column }: Spot): SpotName => {
    const at = positions.rowAt(row);
    return { row: at ? rowKey(at) : '', column: positions.columnAt(column) };
  };
  return { anchor: name(anchor), tip: name(tip) };
}

/** The range where its boxes stand now; `undefined` where its tip has gone. */
export function rangeOf(positions: Positions, { anchor, tip }: RangeNames): Range | undefined {
  const end = positions.spotOf(tip.row, tip.column);
  const start = positions.spotOf(anchor.row, anchor.column) ?? end;
  return start && end ? { anchor: start, tip: end } : undefined;
}
