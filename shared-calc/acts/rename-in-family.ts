import type { HeldFields } from '#shared-calc/fields/difference.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { withDescendants } from '#shared-calc/recipe/family.ts';
import { lineById } from '#shared-calc/recipe/lines-of.ts';
import { renamedLine } from '#shared-calc/recipe/rename-line.ts';
import { withHeld } from '#shared-calc/recipe/whole-recipe.ts';
import { heldOf, linesAbove } from '#shared-calc/recipe/write-lines.ts';
import type { Difference, Line, LocalValue, Records } from '#shared-calc/records/records.ts';
import { renameInRule } from '#shared-calc/rule/rename-line.ts';
import { localsOf } from './line-breaks.ts';

/** The book with a line renamed in its recipe, in all that inherit it, and in what jobs write over them. */
export function renamedIn(records: Records, { recipe, name: from }: Line, to: string): Records {
  const recipes = new Set(withDescendants(records, recipe));
  const lines = [...records.line.values()].filter((line) => recipes.has(line.recipe));
  const marks = [...records.difference.values()].filter((mark) => recipes.has(mark.recipe));
  const locals = [...recipes].flatMap((each) => localsOf(records, each));
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
      locals.map((value) => renamedLocal(value, from, to)),
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

function renamedLocal(value: LocalValue, from: string, to: string): LocalValue {
  return { ...value, line: value.line === from ? to : value.line, text: renameInRule(value.text, from, to) };
}
