import type { Pricing } from '#shared-calc/bench/order-sums.ts';
import { columnKey, sizesOf, type Written, type WrittenByLine, textsOf } from '#shared-calc/jobs/job-sheet.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Job, Line, LocalValue, Recipe, Records, Size, Tank } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';

/** A size as it stands on the bench; the same object as before while nothing of it changed. */
export interface BenchColumn extends ColumnInput {
  /** The id of its record, or its key where it has none. */
  readonly size: string;
  readonly written: WrittenByLine;
}

/** All that a bench is made from. Parts that did not change are the same objects as before. */
export interface BenchSource {
  readonly title: string;
  readonly recipe: Recipe;
  readonly lines: readonly Line[];
  readonly columns: readonly BenchColumn[];
  /** Boxes written over for the whole job. */
  readonly whole: WrittenByLine;
  readonly job: ReadonlyMap<string, string>;
  readonly pricing: Pricing;
  readonly isOldPrice: (material: string) => boolean;
  /** The quote it was issued in, `Q-0027 A`; then nothing can be written. */
  readonly issued?: string;
}

/** The columns of a job, as far as they changed since `before`. */
export function jobColumns(records: Records, job: Job, before: readonly BenchColumn[]): readonly BenchColumn[] {
  const written = writtenBySize(records, job.id);
  const known = new Map(before.map((column) => [column.size, column]));
  const columns: BenchColumn[] = [];
  for (const size of sizesOf(records, job.id)) {
    const tank = records.tank.get(size.tank);
    if (!tank) continue;
    const key = columnKey(tank, columns);
    columns.push(columnOf({ size, tank, key, written: written.get(size.id) ?? [] }, known.get(size.id)));
  }
  return columns.length === before.length && columns.every((column, at) => column === before[at]) ? before : columns;
}

/** What is written for the whole job; the same maps as before while it says the same. */
export function jobWhole(
  records: Records,
  job: Job,
  before: Pick<BenchSource, 'whole' | 'job'> | undefined,
): Pick<BenchSource, 'whole' | 'job'> {
  const whole = new Map((writtenBySize(records, job.id).get('') ?? []).map(toWritten));
  if (before && sameWritten(before.whole, whole)) return before;
  const texts = textsOf(whole);
  return { whole, job: before && sameTexts(before.job, texts) ? before.job : texts };
}

interface ColumnParts {
  readonly size: Size;
  readonly tank: Tank;
  readonly key: string;
  readonly written: readonly LocalValue[];
}

function columnOf({ size, tank, key, written: values }: ColumnParts, before: BenchColumn | undefined): BenchColumn {
  const written = new Map(values.map(toWritten));
  const { id, label, count } = size;
  const locals = textsOf(written);
  const next = { size: id, key, tank, label, count };
  if (!before) return { ...next, written, locals };
  const kept = {
    ...next,
    written: sameWritten(before.written, written) ? before.written : written,
    locals: sameTexts(before.locals, locals) ? before.locals : locals,
  };
  const { key: k, tank: t, label: l, count: c, written: w } = before;
  return k === key && t === tank && l === label && c === count && w === kept.written ? before : kept;
}

function writtenBySize(records: Pick<Records, 'localValue'>, job: string): ReadonlyMap<string, LocalValue[]> {
  return Map.groupBy(
    [...records.localValue.values()].filter((value) => value.job === job),
    (value) => value.size ?? '',
  );
}

function toWritten({ line, text, note, by }: LocalValue): readonly [string, Written] {
  return [line, { text, note, by }];
}

function sameWritten(one: WrittenByLine, other: WrittenByLine): boolean {
  return one.size === other.size && [...one].every(([line, box]) => sameData(other.get(line), box));
}

function sameTexts(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): boolean {
  return one.size === other.size && [...one].every(([line, text]) => other.get(line) === text);
}
