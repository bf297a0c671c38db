import { openGrid, type BoxWrite } from '#shared-calc/engine/open-grid.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Scope } from '#shared-calc/recipe/scope.ts';
import type { BenchInput } from './bench-input.ts';
import type { Box } from './bench-types.ts';
import { boxOf } from './box-of.ts';
import { refreshColumn, type ColumnBoxes } from './column-boxes.ts';
import { openLineTable, type TakenLines } from './line-table.ts';
import { openPutOff } from './put-off.ts';

/** A recipe beside its sizes, worked, to read from. */
export interface Bench {
  readonly input: () => BenchInput;
  readonly box: (column: string, line: string) => Box;
  readonly scope: () => Scope;
}

/** A bench that follows edits. */
export interface LiveBench extends Bench {
  /**
   * Takes a new input over, writing only what differs: the columns named first at once, and the rest a slice
   * with each call of what it answers, until that says there is no more. A later update takes over what an
   * earlier one left undone.
   */
  readonly update: (next: BenchInput, first?: readonly string[]) => () => boolean;
  readonly close: () => void;
}

/** Columns that one slice of an update works: few, so that a page can stop for a frame. */
const SLICE = 4;

/** Opens a bench over a recipe and its sizes, worked at once. */
export function openBench(start: BenchInput): LiveBench {
  const grid = openGrid();
  const table = openLineTable();
  const columns = new Map<string, ColumnBoxes>();
  const behind = openPutOff();
  let input = start;

  function refresh(column: ColumnInput, taken: TakenLines): readonly BoxWrite[] {
    const names = behind.take(column.key);
    const rereads = names ? input.lines.filter((line) => names.has(line.name)) : taken.rereads;
    const now = { column, job: input.job, lines: input.lines, rereads, reader: table.reader() };
    const { boxes, writes } = refreshColumn(columns.get(column.key), now);
    columns.set(column.key, boxes);
    return writes;
  }

  function drop(lines: readonly string[], kept: readonly ColumnInput[]): void {
    for (const name of lines) {
      grid.removeLine(name);
      for (const boxes of columns.values()) boxes.readings.delete(name);
    }
    for (const key of columns.keys()) {
      if (kept.some((column) => column.key === key)) continue;
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

  function box(column: string, name: string): Box {
    const line = table.find(name);
    const boxes = columns.get(column);
    if (!line || !boxes) throw new Error(`no box ${column} ${name}`);
    return boxOf({ line, boxes, worked: grid.read(column, name), isOldPrice: input.isOldPrice });
  }

  update(start);
  return { input: () => input, update, box, scope: () => table.reader().scope, close: grid.close };
}
