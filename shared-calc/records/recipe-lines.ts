import { sortKeyAt } from './sort-key.ts';

/** The lines of a recipe file as records. The list gives the order, so that one line more changes no other. */
export function recipeLines(recipe: string, lines: readonly object[]): readonly object[] {
  return lines.map((line, at) => ({
    id: `${recipe}.${'name' in line ? String(line.name) : ''}`,
    recipe,
    order: sortKeyAt(at + 1),
    ...line,
  }));
}
