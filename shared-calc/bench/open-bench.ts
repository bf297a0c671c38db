import type { BoxValue } from '#shared-calc/engine/box-content.ts';
import { openGrid, type BoxWrite, type Grid } from '#shared-calc/engine/open-grid.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Scope } from '#shared-calc/recipe/scope.ts';
import type { BenchInput } from './bench-input.ts';
import type { Box } from './bench-types.ts';
import { boxOf } from './box-of.ts';
import { contentsOf, refreshColumn, type ColumnBoxes } from './column-boxes.ts';
import { rangesOf, type ColumnRanges } from './ranges.ts';
import type { Line } from '#shared-calc/records/records.ts';
import { boxReader, scopeSignature, type BoxReader } from './box-reader.ts';

/** A recipe with its sizes, worked out, to read from. */
export interface Bench {
  readonly input: () => BenchInput;
  readonly box: (column: string, line: string) => Box;
  readonly scope: () => Scope;
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

/** Opens a bench over a recipe and its sizes and works it out at once. */
export function openBench(start: BenchInput): LiveBench {
  const grid = openGrid();
  const table = openLineTable();
  const columns = new Map<string, ColumnBoxes>();
  const behind = openRecalcQueue();
  let input = start;

  function refresh(column: ColumnInput, taken: TakenLines): readonly BoxWrite[] {
    const names = behind.take(column.key);
    const rereads = names ? input.lines.filter((line) => names.has(line.name)) : taken.rereads;
    const now = { column, job: input.job, lines: input.lines, rereads, reader: table.reader() };
    const before = columns.get(column.key);
    const { boxes, writes } = refreshColumn(before, now);
    columns.set(column.key, boxes);
    if (writes.length + rereads.length + taken.dropped.length === 0) keepRanges(before, boxes);
    return writes;
  }

  function drop(lines: readonly string[], kept: readonly ColumnInput[]): void {
    for (const name of lines) {
      grid.removeLine(name);
      for (const boxes of columns.values()) boxes.readings.delete(name);
    }
    for (const key of [...columns.keys()].filter((each) => !kept.some((column) => column.key === each))) {
      grid.removeColumn(key);
      columns.delete(key);
      behind.take(key);
    }
  }

  function update(next: BenchInput, first?: readonly string[]): () => boolean {
    const taken = table.take(next.lines);
    input = next;
    drop(taken.dropped, next.columns);
    const later = next.columns.filter((column) => first !== undefined && !first.includes(column.key));
    behind.add(later, taken.rereads);
    const write = (some: readonly ColumnInput[]): boolean => {
      grid.write(some.flatMap((column) => refresh(column, taken)));
      return later.length > 0;
    };
    write(next.columns.filter((column) => !later.includes(column)));
    return () => write(later.splice(0, SLICE).filter((column) => behind.has(column.key)));
  }

  const ranges = (column: string) => rangesFor(boxesIn(columns, column), input.lines, grid);

  function box(column: string, name: string): Box {
    const [line, worked] = [table.find(name), grid.read(column, name)];
    return boxOf({ line, boxes: boxesIn(columns, column), worked, ranges: () => ranges(column), input });
  }

  update(start);
  return { input: () => input, update, box, ranges, scope: () => table.reader().scope, close: grid.close };
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
function rangesFor(boxes: ColumnBoxes, lines: readonly Line[], grid: Pick<Grid, 'read'>): ColumnRanges {
  const known = ranged.get(boxes);
  if (known) return known;
  const made = rangesOf({ lines, contents: contentsOf(boxes), before: readOnce(grid, boxes.input.key) });
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

interface TakenLines {
  /** Lines whose cells must be read again in every column. */
  readonly rereads: readonly Line[];
  readonly dropped: readonly string[];
}

interface LineTable {
  readonly take: (next: readonly Line[]) => TakenLines;
  readonly find: (name: string) => Line;
  readonly reader: () => BoxReader;
}

/** The lines of a bench and the reader of their cells; a new reader only if names or kinds change. */
function openLineTable(): LineTable {
  let lines: readonly Line[] = [];
  let byName: ReadonlyMap<string, Line> = new Map();
  let reader = boxReader(lines);
  return {
    take(next) {
      const before = byName;
      if (next === lines) return { rereads: [], dropped: [] };
      lines = next;
      byName = new Map(lines.map((line) => [line.name, line]));
      const dropped = [...before.keys()].filter((name) => !byName.has(name));
      if (scopeSignature(before.values()) === scopeSignature(lines)) {
        return { rereads: lines.filter((line) => before.get(line.name) !== line), dropped };
      }
      reader = boxReader(lines);
      return { rereads: lines, dropped };
    },
    find(name) {
      const line = byName.get(name);
      if (!line) throw new Error(`no line ${name}`);
      return line;
    },
    reader: () => reader,
  };
}

/** Columns whose last changes are not worked out yet, each with the names of its lines to read again. */
interface RecalcQueue {
  readonly has: (column: string) => boolean;
  /** Queues these columns, and adds these lines to those already queued. */
  readonly add: (columns: readonly { readonly key: string }[], lines: readonly Line[]) => void;
  /** Removes a column from the queue and returns its lines; `undefined` if it was not queued. */
  readonly take: (column: string) => ReadonlySet<string> | undefined;
}

function openRecalcQueue(): RecalcQueue {
  const waiting = new Map<string, ReadonlySet<string>>();
  return {
    has: (column) => waiting.has(column),
    add: (columns, lines) => {
      const names = lines.map((line) => line.name);
      for (const column of new Set([...waiting.keys(), ...columns.map(({ key }) => key)])) {
        waiting.set(column, new Set([...(waiting.get(column) ?? []), ...names]));
      }
    },
    take: (column) => {
      const names = waiting.get(column);
      waiting.delete(column);
      return names;
    },
  };
}
