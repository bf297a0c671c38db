import type { BoxPlace } from '#renderer/bench/view-model.ts';
import type { BenchScans } from './bench-scans.ts';
import type { Loud } from './column-scan.ts';

/** Flags the flag key stops at. It skips cells that only wait on another cell, and plain local values. */
const stops: ReadonlySet<Loud> = new Set([
  'stop',
  'watch',
  'unsure',
  'unknown',
  'advice',
  'needs',
  'range',
  'loop',
  'fault',
  'old',
]);

export type IsMarked = (column: string, row: string) => boolean;

export interface MarkSearch {
  /** Names of the lines, in the recipe's order, then the limits of the place. */
  readonly lines: readonly string[];
  /** Keys of the columns, from the left. */
  readonly columns: readonly string[];
  readonly isMarked: IsMarked;
}

/** The next marked cell after a position, line by line and from left to right; after the last comes the first. */
export function nextMarked(
  { lines, columns, isMarked }: MarkSearch,
  from: BoxPlace | undefined,
  back: boolean,
): BoxPlace | undefined {
  const marked = lines.flatMap((row) =>
    columns.filter((column) => isMarked(column, row)).map((column) => ({ row, column })),
  );
  const rowOf = new Map(lines.map((line, at) => [line, at]));
  const columnOf = new Map(columns.map((column, at) => [column, at]));
  const rank = ({ row, column }: BoxPlace) => (rowOf.get(row) ?? 0) * columns.length + (columnOf.get(column) ?? 0);
  const here = from ? rank(from) : -1;
  if (back) return marked.findLast((place) => rank(place) < here) ?? marked.at(-1);
  return marked.find((place) => rank(place) > here) ?? marked[0];
}

/** Cells that the flag key stops at. */
export function flaggedIn(scans: BenchScans): IsMarked {
  return (column, row) =>
    scans
      .of(column)
      .byLine.get(row)
      ?.some((loud) => stops.has(loud)) ?? false;
}
