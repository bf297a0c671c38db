import type { Recipe, Records } from '#shared-calc/records/records.ts';

type Recipes = Pick<Records, 'recipe'>;

/** A recipe with its parents, the eldest first; a cycle ends where it closes. */
export function chainOf({ recipe }: Recipes, id: string): readonly Recipe[] {
  const chain: Recipe[] = [];
  for (let at = recipe.get(id); at && !chain.includes(at); at = recipe.get(at.parent ?? '')) chain.unshift(at);
  return chain;
}

/** The recipes that inherit from a recipe, straight or through others; each behind its parent. */
export function descendantsOf(records: Recipes, id: string): readonly string[] {
  const below = [...records.recipe.values()].flatMap((recipe) => {
    const chain = chainOf(records, recipe.id).map((each) => each.id);
    const at = chain.indexOf(id);
    return at >= 0 && recipe.id !== id ? [{ id: recipe.id, depth: chain.length }] : [];
  });
  return below.toSorted((one, other) => one.depth - other.depth).map((each) => each.id);
}

/** A recipe and all that inherit from it. */
export function withDescendants(records: Recipes, id: string): readonly string[] {
  return [id, ...descendantsOf(records, id)];
}

/** The id that a line of a recipe has in another one of its family: `H1.drain_gap` is `H5.drain_gap` there. */
export function lineIdIn(recipe: string, line: { readonly id: string; readonly recipe: string }): string {
  const { id, recipe: from } = line;
  const rest = id.startsWith(from) ? id.slice(from.length) : '';
  return /^[.:]/.test(rest) ? recipe + rest : `${recipe}:${id}`;
}
