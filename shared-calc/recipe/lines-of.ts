import type { Line } from '#shared-calc/records/records.ts';
import { lineIdIn, withDescendants } from './family.ts';
import { wholeRecipes, type RecipeTables } from './whole-recipe.ts';

/** A recipe's lines in order, those it inherits among them. */
export function linesOf(records: RecipeTables, recipe: string): readonly Line[] {
  return wholeRecipes(records).lines(recipe);
}

/** A recipe's lines for a tank; the same list for all tanks for which nothing differs. */
export function linesFor(records: RecipeTables, recipe: string, tank: string): readonly Line[] {
  return wholeRecipes(records).linesFor(recipe, tank);
}

/** A line of any recipe by its id there. */
export function lineById(records: RecipeTables, id: string): Line | undefined {
  return wholeRecipes(records).find(id);
}

/** The lines of all recipes. */
export function allLines(records: RecipeTables): readonly Line[] {
  return wholeRecipes(records).all();
}

/** The ids that a new line of a recipe may not have: those of its lines, and of lines added in what inherits from it. */
export function takenLineIds(records: RecipeTables, recipe: string): ReadonlySet<string> {
  const recipes = withDescendants(records, recipe);
  const lines = recipes.flatMap((each) => linesOf(records, each));
  return new Set(lines.map((line) => (line.recipe === recipe ? line.id : lineIdIn(recipe, line))));
}
