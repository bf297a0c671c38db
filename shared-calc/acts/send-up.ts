import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { lineIdIn } from '#shared-calc/recipe/family.ts';
import type { LineMark } from '#shared-calc/recipe/family-marks.ts';
import { lineById, linesOf, takenLineIds } from '#shared-calc/recipe/lines-of.ts';
import { withHeld } from '#shared-calc/recipe/whole-recipe.ts';
import { withLines } from '#shared-calc/recipe/write-lines.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';

interface Sent {
  readonly recipe: string;
  readonly parent: string;
  readonly marks: readonly LineMark[];
}

/** The book with differences of a recipe in its parent; the recipe itself has them from there. */
export function sentUp(records: Records, { recipe, parent, marks }: Sent): Records {
  const above = new Map(linesOf(records, parent).map((line) => [lineIdIn(recipe, line), line]));
  const changed = marks.flatMap(({ line, mark }) => {
    const from = above.get(line);
    return from && mark?.what === 'changed' ? [withHeld(from, mark.fields)] : [];
  });
  const gone = marks.flatMap(({ line, is }) => (is === 'left out' ? (above.get(line)?.id ?? []) : []));
  const moved = marks.flatMap(({ line, is }) => (is === 'added' ? (records.line.get(line) ?? []) : []));
  const freed = {
    ...records,
    difference: putRecords(
      records.difference,
      [],
      marks.flatMap(({ mark }) => mark?.id ?? []),
    ),
    line: putRecords(
      records.line,
      [],
      moved.map(({ id }) => id),
    ),
  };
  const put = [...changed, ...moved.map((line) => asIn(freed, line, parent))];
  return withLines(freed, parent, { put, gone });
}

/** An added line as the parent's own; what inherits it finds it under the id that it had. */
function asIn(records: Records, line: Line, recipe: string): Line {
  const id = lineIdIn(recipe, line);
  const isFree = !takenLineIds(records, recipe).has(id) && lineById(records, id) === undefined;
  return { ...line, id: isFree ? id : `${id}_${line.recipe}`, recipe };
}
