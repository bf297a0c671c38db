import { readerFor, type BoxReader } from './box-reader.ts';
import { namedLines } from './column-lines.ts';
import { cyclesOf } from './cycles.ts';
import type { Line } from '#shared-calc/records/records.ts';

/** The lines of a recipe with their parsed texts. */
export interface ReadLines {
  readonly lines: readonly Line[];
  readonly byName: ReadonlyMap<string, Line>;
  readonly reader: BoxReader;
}

/** Cached by the list of lines, so that a text is parsed once. */
export function readLines(lines: readonly Line[]): ReadLines {
  const known = readBefore.get(lines) ?? {
    lines,
    byName: namedLines(lines),
    reader: readerFor(lines),
  };
  readBefore.set(lines, known);
  return known;
}

const readBefore = new WeakMap<readonly Line[], ReadLines>();

/** The cycle through one of these lines, if the texts of all lines make one. */
export function findCycle(
  { lines, reader }: ReadLines,
  textOf: (line: Line) => string,
  through: readonly string[],
): readonly string[] | undefined {
  const cycles = cyclesOf(new Map(lines.map((line) => [line.name, reader.read(line, textOf(line))])));
  const name = through.find((each) => cycles.has(each));
  return name === undefined ? undefined : cycles.get(name);
}
