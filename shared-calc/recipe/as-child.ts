import type { Line, Recipe, Records } from '#shared-calc/records/records.ts';
import { withDescendants } from './family.ts';
import { linesOf } from './lines-of.ts';
import { placedAs } from './place-lines.ts';
import { tanksAsBefore } from './tanks-as-before.ts';
import { keysBetween, linesAbove, withLines } from './write-lines.ts';

/**
 * The book in which a recipe that stands alone is the child of another and holds only what differs from it. Each of its
 * lines, and of those that inherit from it, is as before, for every tank.
 */
export function asChild(records: Records, recipe: Recipe, parent: string): Records {
  const child = { ...recipe, parent };
  const joined = { ...records, recipe: new Map(records.recipe).set(recipe.id, child) };
  const above = linesAbove(joined, recipe.id);
  const own = linesOf(records, recipe.id);
  const line = new Map(records.line);
  for (const { id, name } of own) if (above.get(id)?.name === name) line.delete(id);
  const here = new Set(own.map(({ id }) => id));
  const gone = [...above.keys()].filter((id) => !here.has(id));
  const family = withDescendants(records, recipe.id);
  const whole = family.reduce(
    (now, id) => asTheyWere(records, now, id),
    withLines({ ...joined, line }, recipe.id, { gone }),
  );
  return tanksAsBefore(records, whole, family);
}

/** The book with the lines of a recipe as they were in another state of it. */
function asTheyWere(before: Records, now: Records, recipe: string): Records {
  const has = new Map(linesOf(now, recipe).map((line) => [line.id, line]));
  const put = placedAs(linesOf(before, recipe), linesAbove(now, recipe)).filter((line) =>
    isOther(line, has.get(line.id)),
  );
  return put.length === 0 ? now : withLines(now, recipe, { put });
}

function isOther(line: Line, now: Line | undefined): boolean {
  return now?.name !== line.name || keysBetween(line, now).length > 0;
}
