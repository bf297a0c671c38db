import type { Box } from '#shared-calc/bench/bench-types.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { isOtherLine } from '#shared-calc/jobs/house-changes.ts';
import { keysBetween } from '#shared-calc/recipe/write-lines.ts';
import { descendantsOf } from '#shared-calc/recipe/family.ts';
import { linesFor, linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';

export type Figure = Box['value'];

/** A line that two recipes do not have alike. */
export interface LineDifference {
  readonly line: string;
  readonly change: 'changed' | 'added' | 'left out';
  readonly left: Line | undefined;
  readonly right: Line | undefined;
  /** Which fields differ, of a line that is changed. */
  readonly keys: readonly string[];
}

/** One recipe of a state of a book. */
export interface RecipeSide {
  readonly records: Records;
  readonly recipe: string;
}

/** The lines that differ between two recipes, by name, in the order of the second; those it lacks stand where they stood. */
export function recipeDiff(left: RecipeSide, right: RecipeSide): readonly LineDifference[] {
  return diffLines(linesOf(left.records, left.recipe), linesOf(right.records, right.recipe));
}

/** The lines that differ on a tank and not on the others, or otherwise than on them. */
export function tankDiff(left: RecipeSide, right: RecipeSide, tank: string): readonly LineDifference[] {
  const usual = new Map(recipeDiff(left, right).map((each) => [each.line, each]));
  const [had, has] = [left, right].map(({ records, recipe }) => linesFor(records, recipe, tank));
  return diffLines(had ?? [], has ?? []).filter((each) => {
    const same = usual.get(each.line);
    return !same || isOtherLine(same.left, each.left) || isOtherLine(same.right, each.right);
  });
}

function diffLines(had: readonly Line[], has: readonly Line[]): readonly LineDifference[] {
  const [before, after] = [had, has].map((lines) => new Map(lines.map((line) => [line.name, line])));
  const names = has.map(({ name }) => name);
  for (const [at, { name }] of had.entries()) {
    if (after?.has(name) === true) continue;
    names.splice(names.indexOf(had[at - 1]?.name ?? '') + 1, 0, name);
  }
  return names.flatMap((line) => differenceOf(line, before?.get(line), after?.get(line)) ?? []);
}

function differenceOf(line: string, left: Line | undefined, right: Line | undefined): LineDifference | undefined {
  if (!left) return { line, change: 'added', left, right, keys: [] };
  if (!right) return { line, change: 'left out', left, right, keys: [] };
  const keys = keysBetween(left, right).filter((key) => key !== 'order');
  if (!isOtherLine({ ...left, id: '', recipe: '' }, { ...right, id: '', recipe: '' })) return undefined;
  return { line, change: 'changed', left, right, keys };
}

/** The other recipe that differs in the fewest lines; one that inherits from it only where there is no other. */
export function mostAlike(records: Records, recipe: string): string | undefined {
  const below = new Set(descendantsOf(records, recipe));
  const others = [...records.recipe.keys()].filter((id) => id !== recipe);
  const strangers = others.filter((id) => !below.has(id));
  const ranked = (strangers.length > 0 ? strangers : others).map((id) => ({
    id,
    differs: recipeDiff({ records, recipe: id }, { records, recipe }).length,
  }));
  return ranked.toSorted((one, other) => one.differs - other.differs)[0]?.id;
}

export interface FigurePair {
  readonly from: Figure;
  readonly to: Figure;
  readonly moved: boolean;
}

/** The figures of both recipes for a tank, by line; undefined where a recipe has no such line, or no figure. */
export function figuresBetween(left: RecipeSide, right: RecipeSide, tank: string): ReadonlyMap<string, FigurePair> {
  const [from, to] = [benchOn(left, tank), benchOn(right, tank)];
  if (!from || !to) return new Map();
  const names = new Set([from, to].flatMap((bench) => bench.input().lines.map(({ name }) => name)));
  const has = (bench: Bench) => new Set(bench.input().lines.map(({ name }) => name));
  const [before, after] = [has(from), has(to)];
  const pairs = [...names].map((name) => {
    const was = before.has(name) ? from.box(tank, name).value : undefined;
    const is = after.has(name) ? to.box(tank, name).value : undefined;
    return [name, { from: was, to: is, moved: was !== is }] as const;
  });
  return new Map(pairs);
}

/** A recipe worked on one tank, without a job. */
function benchOn({ records, recipe }: RecipeSide, code: string): Bench | undefined {
  const tank = records.tank.get(code);
  if (!tank) return undefined;
  const column = { key: code, tank, label: '', count: 1, locals: new Map<string, string>() };
  const lines = linesFor(records, recipe, code);
  return onceBench({ lines, columns: [column], job: new Map(), isOldPrice: () => false });
}
