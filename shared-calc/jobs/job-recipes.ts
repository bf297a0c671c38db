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
