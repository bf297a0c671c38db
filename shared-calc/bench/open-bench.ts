import type { BoxValue } from '#shared-calc/engine/box-content.ts';
import { openGrid, type BoxWrite, type Grid } from '#shared-calc/engine/open-grid.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Scope } from '#shared-calc/recipe/scope.ts';
import type { BenchInput } from './bench-input.ts';
import type { Box } from './bench-types.ts';
import { boxOf } from './box-of.ts';
import { readerFor } from './box-reader.ts';
import { absentBox, columnLines, namedLines } from './column-lines.ts';
import { contentsOf, refreshColumn, type ColumnBoxes } from './column-boxes.ts';
import { rangesOf, type ColumnRanges } from './ranges.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** A recipe with its sizes, worked out, to read from. */
export interface Bench {
  readonly input: () => BenchInput;
  /** The lines of a size, in the order of its recipe. */
  readonly lines: (column: string) => readonly Line[];
  /** A cell; where the recipe of the size does not have the line, a cell that says so. */
  readonly box: (column: string, line: string) => Box;
  /** What a rule of a size may name. */
  readonly scope: (column: string) => Scope;
  /** What guesses make of the figures of a size. */
  readonly ranges: (column: string) => ColumnRanges;
}

/** A bench that follows edits. */
export interface LiveBench extends Bench {
  /**
   * Takes a new input and writes only what differs: the columns in `first` at once, the others in slices, one for each
   * call of the returned function, which says whether more is left. A later update also does what an earlier one left.
   */
  readonly update: (next: BenchInput, first?: readonly string[]) => () => boolean;
  readonly close: () => void;
}

/** Columns worked out in one slice of an update; few, so that a page does not miss a frame. */
const SLICE = 4;

/** Opens a bench over its sizes, of one recipe or several, and works it out at once. */
export function openBench(start: BenchInput): LiveBench {
  const grid = openGrid();
  const columns = new Map<string, ColumnBoxes>();
  /** Keys of columns whose last changes are not worked out yet. */
  const behind = new Set<string>();
  let input = start;
  let inputs = byKey(start);

  const linesOf = (key: string) => columnLines(input, inputs.get(key) ?? {});

  function refresh(key: string): readonly BoxWrite[] {
    const column = inputs.get(key);
    behind.delete(key);
    if (!column) return [];
    const before = columns.get(key);
    const { boxes, writes, dropped } = refreshColumn(before, { column, job: input.job, lines: linesOf(key) });
    columns.set(key, boxes);
    if (dropped.length > 0) grid.removeBoxes(key, dropped);
    if (writes.length === 0 && before?.lines === boxes.lines) keepRanges(before, boxes);
    return writes;
  }

  function drop(next: BenchInput): void {
    for (const name of goneFrom(input.lines, next.lines)) grid.removeLine(name);
    const kept = byKey(next);
    const gone = [...columns.keys()].filter((each) => !kept.has(each));
    gone.forEach(grid.removeColumn);
    for (const key of gone) for (const each of [columns, behind]) each.delete(key);
  }

  function update(next: BenchInput, first?: readonly string[]): () => boolean {
    drop(next);
    input = next;
    inputs = byKey(next);
    const later = [...inputs.keys()].filter((key) => first !== undefined && !first.includes(key));
    for (const key of later) behind.add(key);
    const write = (some: readonly string[]): boolean => {
      grid.write(some.flatMap(refresh));
      return later.length > 0;
    };
    write([...inputs.keys()].filter((key) => !later.includes(key)));
    return () => write(later.splice(0, SLICE).filter((key) => behind.has(key)));
  }

  const ranges = (column: string) => rangesFor(boxesIn(columns, column), grid);

  function box(column: string, name: string): Box {
    const lines = linesOf(column);
    const line = namedLines(lines).get(name);
    if (!line) return absentBox(input, column, name);
    const parts = { line, boxes: boxesIn(columns, column), worked: grid.read(column, name) };
    return boxOf({ ...parts, ranges: () => ranges(column), input: { lines, isOldPrice: input.isOldPrice } });
  }

  update(start);
  const read = { input: () => input, lines: linesOf, scope: (key: string) => readerFor(linesOf(key)).scope };
  return { ...read, update, box, ranges, close: grid.close };
}

function goneFrom(before: readonly Line[], after: readonly Line[]): readonly string[] {
  const names = namedLines(after);
  return before === after ? [] : [...namedLines(before).keys()].filter((name) => !names.has(name));
}

function byKey({ columns }: BenchInput): ReadonlyMap<string, ColumnInput> {
  return new Map(columns.map((column) => [column.key, column]));
}

function boxesIn(columns: ReadonlyMap<string, ColumnBoxes>, column: string): ColumnBoxes {
  const boxes = columns.get(column);
  if (!boxes) throw new Error(`no column ${column}`);
  return boxes;
}

const ranged = new WeakMap<ColumnBoxes, ColumnRanges>();

/** An update that changes nothing of a column makes other boxes of it, with the same ranges. */
function keepRanges(before: ColumnBoxes | undefined, after: ColumnBoxes): void {
  const known = before && ranged.get(before);
  if (known) ranged.set(after, known);
}

/** The probes of a column, worked when they are first read after a change to it. */
function rangesFor(boxes: ColumnBoxes, grid: Pick<Grid, 'read'>): ColumnRanges {
  const known = ranged.get(boxes);
  if (known) return known;
  const { lines, input } = boxes;
  const made = rangesOf({ lines, contents: contentsOf(boxes), before: readOnce(grid, input.key) });
  ranged.set(boxes, made);
  return made;
}

/** A cell that several probes read is asked of the engine once. */
function readOnce(grid: Pick<Grid, 'read'>, column: string): (line: string) => BoxValue {
  const values = new Map<string, BoxValue>();
  return (line) => {
    const value = values.get(line) ?? grid.read(column, line);
    values.set(line, value);
    return value;
  };
}
