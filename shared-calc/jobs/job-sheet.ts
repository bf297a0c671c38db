import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Job, LocalValue, QuoteLine, Records, Size, Tank } from '#shared-calc/records/records.ts';

/** What is written over in one cell, and by whom. */
export type Written = Pick<LocalValue, 'text' | 'note' | 'by'>;
export type WrittenByLine = ReadonlyMap<string, Written>;

/** A size as a job has it: the input of a bench column, plus who wrote what. */
export interface SheetColumn extends Omit<ColumnInput, 'locals'> {
  /** The id of its record, or its key if it has none. */
  readonly size: string;
  readonly locals: WrittenByLine;
}

/** The input of a quote: sizes on a recipe, cells written over, and lines for this job alone. */
export interface JobSheet {
  readonly job?: Job;
  /** The usual one; a size may name another. */
  readonly recipe: string;
  readonly columns: readonly SheetColumn[];
  /** Cells written over for the whole job. */
  readonly whole: WrittenByLine;
  readonly oneOffs: readonly QuoteLine[];
}

/** Cells written over, by line; cached by the list of values. */
export function writtenByLine(values: readonly LocalValue[]): WrittenByLine {
  const known = writtenIn.get(values) ?? new Map(values.map(({ line, text, note, by }) => [line, { text, note, by }]));
  writtenIn.set(values, known);
  return known;
}

const writtenIn = new WeakMap<readonly LocalValue[], WrittenByLine>();

/** The texts alone; cached by the map. */
export function textsOf(written: WrittenByLine): ReadonlyMap<string, string> {
  const known = textsIn.get(written) ?? new Map([...written].map(([line, { text }]) => [line, text]));
  textsIn.set(written, known);
  return known;
}

const textsIn = new WeakMap<WrittenByLine, ReadonlyMap<string, string>>();

export function keysOf(sheet: Pick<JobSheet, 'columns'>): readonly string[] {
  return sheet.columns.map((column) => column.key);
}

/** A job's sizes in the order of its bench. */
export function sizesOf(records: Pick<Records, 'size'>, job: string): readonly Size[] {
  return [...records.size.values()].filter((size) => size.job === job).toSorted((a, b) => a.order - b.order);
}

/** `T07`, or `T07#2` for the second column of a tank. */
export function columnKey(tank: Tank, before: readonly { readonly tank: Tank }[]): string {
  const same = before.filter((column) => column.tank.id === tank.id).length;
  return same === 0 ? tank.id : `${tank.id}#${same + 1}`;
}

/** A size as `T07`, `T07x2` where it is built twice, `T05:H3` with a recipe of its own. */
export function sizeWords({ tank, count, recipe }: Pick<Size, 'tank' | 'count' | 'recipe'>): string {
  const built = recipe === undefined ? tank : `${tank}:${recipe}`;
  return count === 1 ? built : `${built}x${count}`;
}
