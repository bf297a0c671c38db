import { z } from 'zod';
import { readerFor } from '#shared-calc/bench/box-reader.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { putRecords } from '#shared-calc/jobs/put-records.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';
import { patternMaterials } from '#shared-calc/recipe/pattern.ts';
import { RecipeAnswers } from '#shared-calc/recipe/recipe-answers.ts';
import { recipeOfAnswers, type AnsweredRecipe } from '#shared-calc/recipe/recipe-of-answers.ts';
import { writtenText } from '#shared-calc/recipe/typed-text.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { recordKinds, type Line, type Material, type Records } from '#shared-calc/records/records.ts';
import { sortKeyAt } from '#shared-calc/records/sort-key.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { nextRecipeId } from './copy-recipe.ts';

const MakeRecipe = z.strictObject({
  id: recordKinds.recipe.shape.id.optional().describe('Its code; left out: the next free one.'),
  title: z.string(),
  answers: RecipeAnswers.prefault({}),
});

export const makeRecipe = act<z.infer<typeof MakeRecipe>>({
  name: 'makeRecipe',
  says: 'Makes a whole house recipe of answers: layers, depths, mix and fittings; figures that nobody gave need one.',
  input: MakeRecipe,
  run: ({ records, display }, { id = nextRecipeId(records), title: typed, answers }) => {
    const title = typed.trim();
    if (title === '') return failed({ kind: 'no-recipe-title' });
    if (records.recipe.has(id)) return failed({ kind: 'recipe-taken', recipe: id });
    const kind = answers.animals === undefined ? undefined : findRecord(records, 'animalKind', answers.animals);
    if (kind && !kind.ok) return kind;
    const read = withStored(recipeOfAnswers(answers), display);
    if (!read.ok) return read;
    return ok(recipeMade(records, read.value, { id, title, ...(kind && { animalKind: kind.value.id }) }));
  },
});

/** The recipe with its typed figures as a book stores them. */
function withStored(recipe: AnsweredRecipe, display: Display): Result<AnsweredRecipe, ActFault> {
  const reader = readerFor(recipe.lines);
  const lines: Line[] = [];
  for (const line of recipe.lines) {
    const isTyped = line.role === 'given' && line.source === 'house';
    const written = isTyped ? writtenText(line.text, line, display) : ok(line.text);
    if (!written.ok) return failed({ kind: 'unreadable', line: line.name, text: line.text, fault: written.fault });
    const reading = isTyped ? reader.read(line, written.value) : undefined;
    if (reading?.is === 'faulty')
      return failed({ kind: 'unreadable', line: line.name, text: line.text, fault: reading.fault });
    lines.push({ ...line, text: written.value });
  }
  return ok({ ...recipe, lines });
}

function recipeMade(
  records: Records,
  { lines, ownGoods }: AnsweredRecipe,
  made: { readonly id: string; readonly title: string; readonly animalKind?: string },
): Change {
  const material = new Map(records.material);
  const goodsOf = new Map(
    ownGoods.map(({ line, label }) => {
      const goods = ownMaterial(material, label);
      material.set(goods.id, goods);
      return [line, goods.id] as const;
    }),
  );
  const own = lines.map((line, at): Line => {
    const goods = goodsOf.get(line.name) ?? line.material;
    return {
      ...line,
      id: `${made.id}.${line.name}`,
      recipe: made.id,
      order: sortKeyAt(at + 1),
      ...(goods !== undefined && { material: goods }),
    };
  });
  for (const { material: code = '' } of own) {
    const goods = patternMaterials().get(code);
    if (goods && !material.has(code)) material.set(code, goods);
  }
  return diffRecords(`recipe ${made.id} ${made.title} made`, records, {
    ...records,
    recipe: putRecords(records.recipe, [{ ...made, note: '' }]),
    line: putRecords(records.line, own),
    material,
  });
}

/** A material of that name in the book, or a new one. */
function ownMaterial(known: ReadonlyMap<string, Material>, label: string): Material {
  const same = [...known.values()].find((each) => each.label.toLowerCase() === label.toLowerCase());
  if (same) return same;
  const numbers = [...known.keys()].map((id) => Number(/^M(\d{1,6})$/.exec(id)?.[1] ?? 0));
  const reserved = [...patternMaterials().keys()].map((id) => Number(/^M(\d{1,6})/.exec(id)?.[1] ?? 0));
  const id = freeId(`M${String(Math.max(0, ...numbers, ...reserved) + 1).padStart(2, '0')}`, known);
  return { id, label, unit: 'L', sale: 'packs', keeps: true, note: '' };
}
