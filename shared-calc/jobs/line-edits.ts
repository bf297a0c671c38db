import { limitedTanks } from '#shared-calc/recipe/limited-tanks.ts';
import { linesFor, linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';
import type { HouseChange, Line } from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { isOtherLine } from './house-changes.ts';

/** A line of a house before and after an edit; one of them is left out where it is new or gone. */
export interface LineEdit extends Pick<HouseChange, 'recipe' | 'before' | 'after' | 'for'> {}

/** What differs between the recipes of two states of a book, in each recipe that both have. */
export function lineEdits(before: RecipeTables, after: RecipeTables): readonly LineEdit[] {
  return [...after.recipe.keys()].flatMap((recipe) => {
    if (!before.recipe.has(recipe)) return [];
    const whole = editsBetween(linesOf(before, recipe), linesOf(after, recipe));
    return [...whole, ...limitedEdits(before, after, { recipe, whole })].map((edit) => ({ recipe, ...edit }));
  });
}

type Edit = Omit<LineEdit, 'recipe'>;

function editsBetween(before: readonly Line[], after: readonly Line[]): readonly Edit[] {
  if (before === after) return [];
  const [had, has] = [before, after].map((lines) => new Map(lines.map((line) => [line.id, line])));
  const gone = before.flatMap((line): readonly Edit[] => (has?.has(line.id) === true ? [] : [{ before: line }]));
  const written = after.flatMap((line): readonly Edit[] => {
    const from = had?.get(line.id);
    if (from === line) return [];
    return from ? [{ before: from, after: line }] : [{ after: line }];
  });
  return [...gone, ...written].filter((edit) => isOtherLine(edit.before, edit.after));
}

interface InRecipe {
  readonly recipe: string;
  readonly whole: readonly Edit[];
}

/** What changes for some tanks otherwise than for the others. */
function limitedEdits(before: RecipeTables, after: RecipeTables, { recipe, whole }: InRecipe): readonly Edit[] {
  const tanks = new Set([...limitedTanks(before, recipe), ...limitedTanks(after, recipe)]);
  const edits: (Edit & { readonly tank: string })[] = [];
  for (const tank of tanks) {
    const own = editsBetween(linesFor(before, recipe, tank), linesFor(after, recipe, tank));
    for (const edit of own.filter((each) => !whole.some((usual) => sameData(usual, each))))
      edits.push({ ...edit, tank });
  }
  const groups: Edit[] = [];
  for (const { tank, ...edit } of edits) {
    const at = groups.findIndex(({ before: from, after: to }) => sameData([from, to], [edit.before, edit.after]));
    const same = groups[at];
    if (same) groups[at] = { ...same, for: [...(same.for ?? []), tank] };
    else groups.push({ ...edit, for: [tank] });
  }
  return groups;
}
