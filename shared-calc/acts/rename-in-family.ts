import type { HeldFields } from '#shared-calc/fields/difference.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { valuesOver, writtenElsewhere } from '#shared-calc/jobs/job-recipes.ts';
import { withDescendants } from '#shared-calc/recipe/family.ts';
import { lineById } from '#shared-calc/recipe/lines-of.ts';
import { renamedLine } from '#shared-calc/recipe/rename-line.ts';
import { withHeld } from '#shared-calc/recipe/whole-recipe.ts';
import { heldOf, linesAbove } from '#shared-calc/recipe/write-lines.ts';
import type { Difference, Line, LocalValue, Records } from '#shared-calc/records/records.ts';
import { renameInRule } from '#shared-calc/rule/rename-line.ts';

/** The book with a line renamed in its recipe, in all that inherit it, and in what jobs write over them. */
export function renamedIn(records: Records, { recipe, name: from }: Line, to: string): Records {
  const recipes = new Set(withDescendants(records, recipe));
  const lines = [...records.line.values()].filter((line) => recipes.has(line.recipe));
  const marks = [...records.difference.values()].filter((mark) => recipes.has(mark.recipe));
  const locals = [...recipes].flatMap((each) => valuesOver(records, each));
  return {
    ...records,
    line: putRecords(
      records.line,
      lines.map((line) => renamedLine(line, from, to)),
    ),
    difference: putRecords(
      records.difference,
      marks.map((mark) => renamedMark(records, mark, { from, to })),
    ),
    localValue: putRecords(
      records.localValue,
      locals.flatMap((value) => renamedValues(records, value, { from, to, recipes })),
    ),
  };
}

interface Rename {
  readonly from: string;
  readonly to: string;
}

function renamedMark(records: Records, mark: Difference, { from, to }: Rename): Difference {
  const line = lineById(records, mark.line) ?? linesAbove(records, mark.recipe).get(mark.line);
  if (!line) return mark;
  const renamed = (fields: HeldFields) => heldOf(renamedLine(withHeld(line, fields), from, to), Object.keys(fields));
  return { ...mark, fields: renamed(mark.fields), was: renamed(mark.was) };
}

/** A value of a whole job that another of its recipes reads too stays there under its name. */
function renamedValues(
  records: Records,
  value: LocalValue,
  { from, to, recipes }: Rename & { readonly recipes: ReadonlySet<string> },
): readonly LocalValue[] {
  const renamed = renamedLocal(value, from, to);
  if (value.line !== from || !writtenElsewhere(records, value, recipes)) return [renamed];
  return [value, { ...renamed, id: freeId(`${value.job}.${to}`, records.localValue) }];
}

function renamedLocal(value: LocalValue, from: string, to: string): LocalValue {
  return { ...value, line: value.line === from ? to : value.line, text: renameInRule(value.text, from, to) };
}
