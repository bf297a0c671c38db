import { z } from 'zod';
import dry from '#fixtures/demo/recipes/h3.json' with { type: 'json' };
import wet from '#fixtures/demo/recipes/h1.json' with { type: 'json' };
import goods from '#fixtures/demo/materials.json' with { type: 'json' };
import { recipeLines } from '#shared-calc/records/recipe-lines.ts';
import { recordKinds, type Line, type Material } from '#shared-calc/records/records.ts';
import { lazy } from '#shared-calc/records/memo.ts';

/** Something that a soil is mixed of, with the lines that it brings. */
export interface Ingredient {
  /** `coir`: its lines are `coir_parts` and `coir_need`. */
  readonly name: string;
  readonly parts: Line;
  readonly need: Line;
  /** Dry, as loose. */
  readonly kgPerL: string;
}

/** The lines of the recipe that comes with the program, which a new one is taken from. */
export const patternLines = lazy(() => linesIn(wet));

/** What the recipes that come with the program mix their soil of. */
export const patternIngredients = lazy(() => [...ingredientsIn(linesIn(wet)), ...ingredientsIn(linesIn(dry))]);

/** A material of the pattern as a new book has it: without supplier, lead and season. */
export const patternMaterials = lazy((): ReadonlyMap<string, Material> => {
  const known = z.array(z.looseObject({ id: z.string() })).parse(goods);
  return new Map(
    known.map(({ id, label, unit, sale, keeps }) => {
      return [id, recordKinds.material.parse({ id, label, unit, sale, keeps, note: '' })];
    }),
  );
});

function linesIn(file: unknown): readonly Line[] {
  const { lines } = z.looseObject({ lines: z.array(z.looseObject({})) }).parse(file);
  return z.array(recordKinds.line).parse(recipeLines('pattern', lines));
}

function ingredientsIn(lines: readonly Line[]): readonly Ingredient[] {
  const byName = new Map(lines.map((line) => [line.name, line]));
  const mass = byName.get('mix_dry')?.text ?? '';
  return [...mass.matchAll(/(\w+)_parts \* ([\d.]+ kg\/L)/g)].flatMap(([, name = '', kgPerL = '']) => {
    const [parts, need] = [byName.get(`${name}_parts`), byName.get(`${name}_need`)];
    return parts && need ? [{ name, parts, need, kgPerL }] : [];
  });
}
