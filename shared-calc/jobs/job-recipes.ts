import { linesOf } from '#shared-calc/recipe/lines-of.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';
import type { Job, LocalValue, Records, Size } from '#shared-calc/records/records.ts';

/** The recipe of a size: its own, otherwise that of its job. */
export function recipeOfSize(job: Pick<Job, 'recipe'>, { recipe = job.recipe }: Pick<Size, 'recipe'>): string {
  return recipe;
}

/** The recipes that the sizes of a job are worked from; a job without sizes has its own. */
export function recipesOf({ size }: Pick<Records, 'size'>, job: Pick<Job, 'id' | 'recipe'>): ReadonlySet<string> {
  const sizes = [...size.values()].filter((each) => each.job === job.id);
  return new Set(sizes.length === 0 ? [job.recipe] : sizes.map((each) => recipeOfSize(job, each)));
}

/** What jobs have written over lines of a recipe: for sizes of it, and for the whole of a job that has such a size. */
export function valuesOver(
  records: Pick<Records, 'job' | 'size' | 'localValue'>,
  recipe: string,
): readonly LocalValue[] {
  const isOf = new Map([...records.job.values()].map((job) => [job.id, recipesOf(records, job).has(recipe)] as const));
  return [...records.localValue.values()].filter(({ job: id, size: of }) => {
    const [job, size] = [records.job.get(id), records.size.get(of ?? '')];
    return job && size ? recipeOfSize(job, size) === recipe : isOf.get(id) === true;
  });
}

/** Whether a value of a whole job also goes to a line of that name in another of its recipes. */
export function writtenElsewhere(
  records: RecipeTables & Pick<Records, 'job' | 'size'>,
  { job: id, size, line }: LocalValue,
  recipes: ReadonlySet<string>,
): boolean {
  const job = size === undefined ? records.job.get(id) : undefined;
  const others = job ? [...recipesOf(records, job)].filter((recipe) => !recipes.has(recipe)) : [];
  return others.some((recipe) => linesOf(records, recipe).some(({ name }) => name === line));
}
