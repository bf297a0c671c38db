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

interface FlagSearch {
  /** Names of the lines, in the recipe's order, then the limits of the place. */
  readonly lines: readonly string[];
  /** Keys of the columns, from the left. */
  readonly columns: readonly string[];
  readonly scans: BenchScans;
}

/** The next flagged cell after a position. */
export function nextFlag({ scans, ...search }: FlagSearch, from: BoxPlace | undefined, back: boolean) {
  return nextAmong({ ...search, isMarked: (column, row) => isFlagged(scans, column, row) }, from, back);
}

interface MarkSearch extends Pick<FlagSearch, 'lines' | 'columns'> {
  readonly isMarked: (column: string, row: string) => boolean;
}

/** The next marked cell after a position, line by line and from left to right; after the last comes the first. */
export function nextAmong(
  { lines, columns, isMarked }: MarkSearch,
  from: BoxPlace | undefined,
  back: boolean,
): BoxPlace | undefined {
  const flagged = lines.flatMap((row) =>
    columns.filter((column) => isMarked(column, row)).map((column) => ({ row, column })),
  );
  const rowOf = new Map(lines.map((line, at) => [line, at]));
  const columnOf = new Map(columns.map((column, at) => [column, at]));
  const rank = ({ row, column }: BoxPlace) => (rowOf.get(row) ?? 0) * columns.length + (columnOf.get(column) ?? 0);
  const here = from ? rank(from) : -1;
  if (back) return flagged.findLast((place) => rank(place) < here) ?? flagged.at(-1);
  return flagged.find((place) => rank(place) > here) ?? flagged[0];
}

function isFlagged(scans: BenchScans, column: string, row: string): boolean {
  return (
    scans
      .of(column)
      .byLine.get(row)
      ?.some((loud) => stops.has(loud)) ?? false
  );
}
