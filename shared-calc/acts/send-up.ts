import { lineIdIn, withDescendants } from '#shared-calc/recipe/family.ts';
import type { LineMark } from '#shared-calc/recipe/family-marks.ts';
import { lineById, linesFor, linesOf, takenLineIds } from '#shared-calc/recipe/lines-of.ts';
import { tanksAsBefore } from '#shared-calc/recipe/tanks-as-before.ts';
import { withHeld } from '#shared-calc/recipe/whole-recipe.ts';
import { withLineFor, withLines } from '#shared-calc/recipe/write-lines.ts';
import type { Difference, Line, Records } from '#shared-calc/records/records.ts';

export interface Sent {
  readonly recipe: string;
  readonly parent: string;
  readonly marks: readonly LineMark[];
  /** Differences for some tanks, to be so for them in the parent. */
  readonly same?: readonly LineMark[];
  /** Differences for some tanks, one a line, to be so for all tanks in the parent. */
  readonly forAll?: readonly LineMark[];
}

/**
 * The book with differences of a recipe in its parent. The recipe and what inherits from it have them from there, and
 * are as before for every tank; but what goes up for all tanks is so for all of them here, too.
 */
export function sentUp(records: Records, { recipe, parent, marks, same = [], forAll = [] }: Sent): Records {
  const spread = new Map(forAll.map(({ line, mark }) => [line, mark]));
  const above = new Map(linesOf(records, parent).map((line) => [lineIdIn(recipe, line), line]));
  const alone = forAll.filter(({ line }) => !marks.some((mark) => mark.line === line));
  const changed = [...marks.filter(({ mark }) => mark?.what === 'changed'), ...alone].flatMap(({ line, mark }) => {
    const from = above.get(line);
    return from && mark ? [withHeld(withHeld(from, mark.fields), spread.get(line)?.fields ?? {})] : [];
  });
  const gone = marks.flatMap(({ line, is }) => (is === 'left out' ? (above.get(line)?.id ?? []) : []));
  const moved = marks.flatMap(({ line, is }) => (is === 'added' ? (records.line.get(line) ?? []) : []));
  const freed = without(records, moved, [...marks, ...same, ...forAll]);
  const lines = moved.map((line) => asIn(freed, withHeld(line, spread.get(line.id)?.fields ?? {}), parent));
  const difference = moved.reduce(
    (so, line, at) => followed({ ...freed, difference: so }, line, lines[at]),
    freed.difference,
  );
  const put = [...changed, ...lines];
  const written = withLines({ ...freed, difference }, parent, { put, gone });
  const idOf = new Map(moved.map((line, at) => [line.id, lines[at]?.id]));
  const limited = same.reduce(
    (now, mark) => sentFor(now, parent, idOf.get(mark.line) ?? above.get(mark.line)?.id, mark),
    written,
  );
  const family = withDescendants(records, recipe);
  return tanksAsBefore(records, limited, family, new Set(forAll.map(({ name }) => name)));
}

function without(records: Records, lines: readonly Line[], marks: readonly LineMark[]): Records {
  const [line, difference] = [new Map(records.line), new Map(records.difference)];
  for (const { id } of lines) line.delete(id);
  for (const { mark } of marks) if (mark) difference.delete(mark.id);
  return { ...records, line, difference };
}

/** An added line as the parent's own; what inherits it finds it under the id that it had, if that is free. */
function asIn(records: Records, line: Line, recipe: string): Line {
  const id = lineIdIn(recipe, line);
  const isFree = !takenLineIds(records, recipe).has(id) && lineById(records, id) === undefined;
  return { ...line, id: isFree ? id : `${id}_${line.recipe}`, recipe };
}

/** What the recipe of a line and those below differ in on it, under the id that they find it by in its new recipe. */
function followed(records: Records, from: Line, to: Line | undefined): Records['difference'] {
  const difference = new Map(records.difference);
  for (const recipe of to ? withDescendants(records, from.recipe) : []) {
    const [had, has] = [recipe === from.recipe ? from.id : lineIdIn(recipe, from), lineIdIn(recipe, to ?? from)];
    for (const mark of records.difference.values()) {
      if (had === has || mark.recipe !== recipe || mark.line !== had) continue;
      const id = mark.id.replace(had, has);
      difference.delete(mark.id);
      difference.set(id, { ...mark, id, line: has } satisfies Difference);
    }
  }
  return difference;
}

/** The parent with a difference for some tanks; each keeps what else it has otherwise there. */
function sentFor(records: Records, parent: string, line: string | undefined, { tanks = [], mark }: LineMark): Records {
  return tanks.reduce((now, tank) => {
    const usual = linesFor(now, parent, tank).find(({ id }) => id === line);
    return usual && mark ? withLineFor(now, withHeld(usual, mark.fields), [tank]) : now;
  }, records);
}
