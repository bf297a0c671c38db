import type { Range, Spot } from '#renderer/bench/range.ts';
import { boxAt, spotOf, type BookLayout } from './book-layout.ts';
import type { BookRow } from './book-table.ts';

interface SpotName {
  readonly row: string;
  readonly column: string;
}

/** A range by the names of its fields, so that it stays on them when rows come and go. */
export interface RangeNames {
  readonly anchor: SpotName;
  readonly tip: SpotName;
}

export function namesOf<Row extends BookRow>(layout: BookLayout<Row>, { anchor, tip }: Range): RangeNames {
  const name = (spot: Spot) => {
    const box = boxAt(layout, spot);
    return { row: box?.row.id ?? '', column: box?.column.key ?? '' };
  };
  return { anchor: name(anchor), tip: name(tip) };
}

/** Where those fields stand now; `undefined` where the one last chosen is gone. */
export function rangeOf<Row extends BookRow>(layout: BookLayout<Row>, { anchor, tip }: RangeNames): Range | undefined {
  const end = spotOf(layout, tip.row, tip.column);
  const start = spotOf(layout, anchor.row, anchor.column) ?? end;
  return start && end ? { anchor: start, tip: end } : undefined;
}
