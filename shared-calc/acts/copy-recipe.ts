import { z } from 'zod';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import { chainOf, lineIdIn } from '#shared-calc/recipe/family.ts';
import { inSentence } from '#shared-calc/recipe/line-label.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Difference, Recipe, Records } from '#shared-calc/records/records.ts';
import { ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { findRecord } from './find-record.ts';

const CopyRecipe = z.strictObject({ recipe: z.string() });

export const copyRecipe = act<z.infer<typeof CopyRecipe>>({
  name: 'copyRecipe',
  says: 'Makes a new house recipe with all lines of another.',
  input: CopyRecipe,
  run: ({ records }, { recipe }) => {
    const found = findRecord(records, 'recipe', recipe);
    return found.ok ? ok(recipeCopied(records, found.value)) : found;
  },
});

function recipeCopied(records: Records, recipe: Recipe): Change {
  const id = nextRecipeId(records);
  const lines = linesOf(records, recipe.id).map((line) => ({
    ...line,
    id: lineIdIn(id, line),
    recipe: id,
  }));
  const title = `Copy of ${inSentence(recipe.title)}`;
  const { parent: _, ...alone } = recipe;
  return diffRecords(`${id}, a copy of ${recipe.id}`, records, {
    ...records,
    recipe: putRecords(records.recipe, [{ ...alone, id, title }]),
    line: putRecords(records.line, lines),
    difference: putRecords(records.difference, limitedCopies(records, recipe.id, id)),
  });
}

/** H1, H2 ... after the highest there is. */
export function nextRecipeId({ recipe }: Pick<Records, 'recipe'>): string {
  const numbers = [...recipe.keys()].map((id) => Number(/^H(\d{1,6})$/.exec(id)?.[1] ?? 0));
  return `H${Math.max(0, ...numbers) + 1}`;
}

/** What a recipe, or one that it inherits from, has for some tanks alone; the nearest is the last. */
function limitedCopies(records: Records, from: string, to: string): readonly Difference[] {
  return chainOf(records, from).flatMap(({ id: recipe }) =>
    [...records.difference.values()]
      .filter((mark) => mark.recipe === recipe && mark.for !== undefined)
      .map((mark, at) => {
        const line = lineIdIn(to, { id: mark.line, recipe });
        return {
          ...mark,
          id: freeId(`${line}@${mark.for?.[0] ?? ''}-${recipe}-${at + 1}`, records.difference),
          recipe: to,
          line,
        };
      }),
  );
}
