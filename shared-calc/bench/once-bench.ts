import type { BoxValue } from '#shared-calc/engine/box-content.ts';
import { workOnce } from '#shared-calc/engine/once.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { BenchInput } from './bench-input.ts';
import { boxOf } from './box-of.ts';
import { readerFor } from './box-reader.ts';
import { absentBox, columnLines, namedLines } from './column-lines.ts';
import { refreshColumn, type ColumnBoxes } from './column-boxes.ts';
import type { Bench } from './open-bench.ts';
import { rangesOf, type ColumnRanges } from './ranges.ts';
import { lazy } from '#shared-calc/records/memo.ts';

interface WorkedColumn {
  readonly boxes: ColumnBoxes;
  readonly values: ReadonlyMap<string, BoxValue>;
  /** Worked when it is first read. */
  readonly ranges: () => ColumnRanges;
}

/** A read-only bench. A size is worked out when its first cell is read, and once for the same lines and texts. */
export function onceBench(input: BenchInput): Bench {
  const columns = new Map(input.columns.map((column) => [column.key, column]));
  const columnOf = (key: string): ColumnInput => {
    const column = columns.get(key);
    if (!column) throw new Error(`no column ${key}`);
    return column;
  };
  const { job, isOldPrice } = input;
  const linesOf = (key: string) => columnLines(input, columnOf(key));
  const workedOf = (key: string) => workedColumn(columnOf(key), { lines: linesOf(key), job });
  return {
    input: () => input,
    lines: linesOf,
    scope: (key) => readerFor(linesOf(key)).scope,
    box(key, name) {
      const lines = linesOf(key);
      const line = namedLines(lines).get(name);
      if (!line) return absentBox(input, key, name);
      const { boxes, values, ranges } = workedOf(key);
      return boxOf({ line, boxes, worked: values.get(name) ?? missing(name), ranges, input: { lines, isOldPrice } });
    },
    ranges: (key) => workedOf(key).ranges(),
  };
}

function missing(line: string): BoxValue {
  return { known: false, problem: { why: 'missing', line } };
}

const workings = new WeakMap<ColumnInput, Pick<BenchInput, 'lines' | 'job'> & { readonly worked: WorkedColumn }>();

function workedColumn(column: ColumnInput, { lines, job }: Pick<BenchInput, 'lines' | 'job'>): WorkedColumn {
  const known = workings.get(column);
  if (known && known.lines === lines && known.job === job) return known.worked;
  const { boxes, writes } = refreshColumn(undefined, { column, job, lines });
  const contents = new Map(writes.map(({ line, content }) => [line, content]));
  const values = workOnce(contents);
  const before = (line: string) => values.get(line) ?? missing(line);
  const ranges = lazy(() => rangesOf({ lines, contents, before }));
  const worked = { boxes, values, ranges };
  workings.set(column, { lines, job, worked });
  return worked;
}
