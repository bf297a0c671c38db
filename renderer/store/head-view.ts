import { capital } from '#shared-calc/rule/capital.ts';
import type { HeadView } from '#renderer/bench/view-model.ts';
import { sectionOf } from '#renderer/drawing/section-of.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { sizeOfColumn } from '#shared-calc/bench/size-of-column.ts';
import { showsInches } from '#shared-calc/quantity/shown-unit.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { BenchColumn } from '#shared-calc/jobs/worked-job.ts';
import type { BenchSource } from './bench-source.ts';
import type { LineFaces } from './line-faces.ts';

/** The card over a column, from the column's own figures. Before it is computed, only the tank is known. */
export function headView(
  column: BenchColumn,
  bench: Bench | undefined,
  faces: LineFaces,
  source: Pick<BenchSource, 'recipe' | 'recipes' | 'issued'>,
): HeadView {
  const { key, count, tank } = column;
  const kit = faces.for('kit')?.line;
  const chosen = bench && kit?.options ? bench.box(key, kit.name).value : undefined;
  return {
    key,
    label: calledOf(column),
    size: bench ? sizeOfColumn(bench, key, faces.display).replace(/ inside$/, '') : '',
    kit: typeof chosen === 'string' ? chosen : '',
    kits: (kit?.options ?? []).map((value) => ({ value, label: `${capital(value)} kit` })),
    count,
    section: {
      ...sectionOf(faces.lines, tank.shape, ({ name }) => bench?.box(key, name).value),
      ...(showsInches(faces.display) && { inches: true }),
    },
    issued: source.issued !== undefined,
    ...recipeOf(column, source),
  };
}

function recipeOf(
  { recipe: own }: BenchColumn,
  { recipe: usual, recipes }: Pick<BenchSource, 'recipe' | 'recipes'>,
): Pick<HeadView, 'recipe' | 'ownRecipe' | 'recipes'> {
  return {
    recipe: own ?? usual.id,
    ownRecipe: own === undefined ? '' : own,
    recipes: recipes.map(({ id, title }) => ({ value: id, label: `${id} ${title}` })),
  };
}
