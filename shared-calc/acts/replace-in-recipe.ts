import { z } from 'zod';
import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import { withLines } from '#shared-calc/recipe/write-lines.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Line, Records } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { lineFault } from './line-fault.ts';

/** What is searched: rules and figures, or the words about a line. Names are renamed, never replaced. */
export const searchedFields = ['text', 'label', 'says', 'note', 'section'] as const;
export type SearchedField = (typeof searchedFields)[number];

const ReplaceInRecipe = z.strictObject({
  recipe: z.string(),
  find: z.string().min(1).max(200),
  replace: z.string().max(200),
  whole: z.boolean().default(false).describe('Only whole words and whole names.'),
  fields: z
    .array(z.enum(searchedFields))
    .min(1)
    .default([...searchedFields]),
});

export type ReplaceInput = z.infer<typeof ReplaceInRecipe>;

/** One place where something is replaced, with what is wrong with the line after it. */
export interface Replacement {
  readonly line: Line;
  readonly field: SearchedField;
  readonly before: string;
  readonly after: string;
  readonly fault?: ActFault;
}

/** Every place of a recipe's own lines that has the words, with what it would become. */
export function replacements(records: Records, input: ReplaceInput): readonly Replacement[] {
  const pattern = patternOf(input);
  return linesOf(records, input.recipe).flatMap((line) =>
    input.fields.flatMap((field): readonly Replacement[] => {
      const before = line[field] ?? '';
      // The replacement is literal: `$&` in it means nothing.
      const after = before.replaceAll(pattern, () => input.replace);
      if (after === before) return [];
      const fault = lineFault(records, { ...line, [field]: after });
      return [{ line, field, before, after, ...(fault && { fault }) }];
    }),
  );
}

function patternOf({ find, whole }: Pick<ReplaceInput, 'find' | 'whole'>): RegExp {
  const literal = find.replaceAll(/[\\^$.*+?()[\]{}|]/g, String.raw`\$&`);
  return new RegExp(whole ? String.raw`(?<![\p{L}\p{N}_])${literal}(?![\p{L}\p{N}_])` : literal, 'gu');
}

export const replaceInRecipe = act<ReplaceInput>({
  name: 'replaceInRecipe',
  says: 'Replaces words in the rules, labels, sentences, notes and sections of a recipe, never in the names of lines. All of it or nothing.',
  input: ReplaceInRecipe,
  run: ({ records }, input) => {
    const recipe = findRecord(records, 'recipe', input.recipe);
    if (!recipe.ok) return recipe;
    const found = replacements(records, input);
    const fault = found.find((each) => each.fault)?.fault;
    if (fault) return failed(fault);
    const put = [...Map.groupBy(found, ({ line }) => line)].map(([line, changes]) =>
      changes.reduce((next, { field, after }): Line => ({ ...next, [field]: after }), line),
    );
    const label = `${input.find} replaced in ${input.recipe}`.slice(0, 300);
    return ok(diffRecords(label, records, withLines(records, input.recipe, { put })));
  },
});
