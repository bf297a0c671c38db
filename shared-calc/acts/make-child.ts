import { z } from 'zod';
import { asChild } from '#shared-calc/recipe/as-child.ts';
import { lineMarks } from '#shared-calc/recipe/family-marks.ts';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { added } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { misfitOf } from '#shared-calc/records/misfit.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import { findRecord } from './find-record.ts';
import { numbered } from './house-log.ts';
import { recipesFault } from './family-check.ts';

const MakeChild = z.strictObject({
  recipe: z.string().describe('A recipe that stands alone, such as a whole copy.'),
  parent: z.string(),
  who: z.string().optional().describe('Who does it: a rate of the rate book.'),
  note: z.string().max(10_000).default(''),
});

export const makeChild = act<z.infer<typeof MakeChild>>({
  name: 'makeChild',
  says: 'Makes a recipe that stands alone the child of another: it holds only what differs from it, and no figure moves.',
  input: MakeChild,
  run: ({ records, today }, { recipe: id, parent, who, note }) => {
    const recipe = findRecord(records, 'recipe', id);
    if (!recipe.ok) return recipe;
    if (recipe.value.parent !== undefined)
      return failed({ kind: 'has-parent', recipe: id, parent: recipe.value.parent });
    const above = findRecord(records, 'recipe', parent);
    if (!above.ok) return above;
    const misfit = misfitOf(added('recipe', { ...recipe.value, parent }), records);
    if (misfit) return failed(misfit);
    const after = asChild(records, recipe.value, parent);
    const fault = recipesFault(records, after, id);
    if (fault) return failed(fault);
    const change = diffRecords(`${id} made a child of ${parent}: ${sayKinship(kinship(after, id))}`, records, after);
    const entry = { recipe: id, on: today, inForceOn: today, how: 'join' as const, of: parent, note };
    const told = numbered(records, [{ ...entry, ...(who !== undefined && { by: who }) }]);
    return ok({ ...change, added: [...change.added, ...told] });
  },
});

/** How many lines a recipe has as its parent, and how many it changes, adds and leaves out. */
export interface Kinship {
  readonly equal: number;
  readonly changed: number;
  readonly added: number;
  readonly leftOut: number;
}

export function kinship(records: Records, recipe: string): Kinship {
  const marks = lineMarks(records, recipe);
  const count = (is: string) => marks.filter((mark) => mark.is === is).length;
  const [changed, more] = [count('changed'), count('added')];
  const equal = linesOf(records, recipe).length - changed - more;
  return { equal, changed, added: more, leftOut: count('left out') };
}

/** `231 lines equal, 12 changed, 3 added, 1 left out` */
export function sayKinship(kin: Kinship): string {
  const lines = kin.equal === 1 ? '1 line' : `${kin.equal} lines`;
  return `${lines} equal, ${kin.changed} changed, ${kin.added} added, ${kin.leftOut} left out`;
}
