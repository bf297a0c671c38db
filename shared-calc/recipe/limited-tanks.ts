import { chainOf } from './family.ts';
import type { RecipeTables } from './whole-recipe.ts';

/** The tanks for which a recipe, or one that it inherits from, differs. */
export function limitedTanks(tables: RecipeTables, recipe: string): readonly string[] {
  const chain = new Set(chainOf(tables, recipe).map(({ id }) => id));
  const limited = [...tables.difference.values()].filter((mark) => chain.has(mark.recipe));
  return [...new Set(limited.flatMap((mark) => mark.for ?? []))].toSorted();
}
