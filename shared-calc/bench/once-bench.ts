import type { BoxValue } from '#shared-calc/engine/box-content.ts';
import { workOnce } from '#shared-calc/engine/once.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { BenchInput } from './bench-input.ts';
import { boxOf } from './box-of.ts';
import { boxReader, scopeSignature, type BoxReader } from './box-reader.ts';
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

interface LineSet {
  readonly byName: ReadonlyMap<string, Line>;
  readonly reader: BoxReader;
}

/** A read-only bench. A size is worked out when its first cell is read, and once for the same lines and texts. */
export function onceBench(input: BenchInput): Bench {
  const { byName, reader } = lineSet(input.lines);
  const columns = new Map(input.columns.map((column) => [column.key, column]));
  const columnOf = (key: string): ColumnInput => {
    const column = columns.get(key);
    if (!column) throw new Error(`no column ${key}`);
    return column;
  };
  return {
    input: () => input,
    scope: () => reader.scope,
    box(key, name) {
      const line = byName.get(name);
      if (!line) throw new Error(`no box ${key} ${name}`);
      const { boxes, values, ranges } = workedColumn(columnOf(key), input);
      return boxOf({ line, boxes, worked: values.get(name) ?? missing(name), ranges, input });
    },
    ranges: (key) => workedColumn(columnOf(key), input).ranges(),
  };
}

function missing(line: string): BoxValue {
  return { known: false, problem: { why: 'missing', line } };
}

const workings = new WeakMap<ColumnInput, Pick<BenchInput, 'lines' | 'job'> & { readonly worked: WorkedColumn }>();

function workedColumn(column: ColumnInput, { lines, job }: BenchInput): WorkedColumn {
  const known = workings.get(column);
  if (known && known.lines === lines && known.job === job) return known.worked;
  const { reader } = lineSet(lines);
  const { boxes, writes } = refreshColumn(undefined, { column, job, lines, rereads: lines, reader });
  const contents = new Map(writes.map(({ line, content }) => [line, content]));
  const values = workOnce(contents);
  const before = (line: string) => values.get(line) ?? missing(line);
  const ranges = lazy(() => rangesOf({ lines, contents, before }));
  const worked = { boxes, values, ranges };
  workings.set(column, { lines, job, worked });
  return worked;
}

const lineSets = new WeakMap<readonly Line[], LineSet>();

function lineSet(lines: readonly Line[]): LineSet {
  const known = lineSets.get(lines) ?? {
    byName: new Map(lines.map((line) => [line.name, line])),
    reader: readerFor(lines),
  };
  lineSets.set(lines, known);
  return known;
}

/** Readers of the last recipes: parsed rules are reused while names and kinds are the same. */
const readers = new Map<string, BoxReader>();
const MOST_READERS = 8;

function readerFor(lines: readonly Line[]): BoxReader {
  const signature = scopeSignature(lines);
  const reader = readers.get(signature) ?? boxReader(lines);
  readers.delete(signature);
  readers.set(signature, reader);
  const [oldest] = readers.keys();
  if (readers.size > MOST_READERS && oldest !== undefined) readers.delete(oldest);
  return reader;
}
