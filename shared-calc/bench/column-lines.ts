import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Line } from '#shared-calc/records/records.ts';
import type { BenchInput } from './bench-input.ts';
import type { Box } from './bench-types.ts';

/** The lines of one size: of its own recipe, otherwise those of the bench. */
export function columnLines({ lines }: Pick<BenchInput, 'lines'>, column: Pick<ColumnInput, 'lines'>): readonly Line[] {
  return column.lines ?? lines;
}

const byNames = new WeakMap<readonly Line[], ReadonlyMap<string, Line>>();

/** The lines of a recipe by name; cached by the list. */
export function namedLines(lines: readonly Line[]): ReadonlyMap<string, Line> {
  const known = byNames.get(lines) ?? new Map(lines.map((line) => [line.name, line]));
  byNames.set(lines, known);
  return known;
}

/** The cell of a line that the recipe of its size does not have. */
export function absentBox({ lines }: Pick<BenchInput, 'lines'>, column: string, name: string): Box {
  const line = namedLines(lines).get(name);
  if (!line) throw new Error(`no box ${column} ${name}`);
  return { line, column, value: undefined, source: 'house', text: '', state: 'not in this recipe', flags: [] };
}

const joined = new WeakMap<readonly Line[], { readonly others: readonly unknown[]; readonly all: readonly Line[] }>();

/**
 * The lines of several recipes as one list, each name once: in the order of the first list, a line that only a later one
 * has behind the line it follows there. One recipe is its own list.
 */
export function joinLines(lists: Iterable<readonly Line[]>): readonly Line[] {
  const [first = [], ...others] = new Set(lists);
  if (others.length === 0) return first;
  const known = joined.get(first);
  const isSame = known?.others.length === others.length && known.others.every((each, at) => each === others[at]);
  const all = known && isSame ? known.all : others.reduce(withLines, first);
  joined.set(first, { others, all });
  return all;
}

function withLines(before: readonly Line[], more: readonly Line[]): readonly Line[] {
  const all = [...before];
  const known = namedLines(before);
  let last = -1;
  for (const line of more) {
    const at = known.has(line.name) ? all.findIndex(({ name }) => name === line.name) : -1;
    if (at < 0) all.splice(last + 1, 0, line);
    last = at < 0 ? last + 1 : at;
  }
  return all;
}

/** The lines and sizes of a bench some of whose sizes have other lines than the usual ones; then each size says its own. */
export function withOwnLines<C extends ColumnInput>(
  usual: readonly Line[],
  columns: readonly C[],
): { readonly lines: readonly Line[]; readonly columns: readonly C[] } {
  if (columns.every(({ lines = usual }) => lines === usual)) return { lines: usual, columns };
  const own = columns.map((column) => ({ ...column, lines: column.lines ?? usual }));
  return { lines: joinLines(own.map(({ lines }) => lines)), columns: own };
}
