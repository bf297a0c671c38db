import { capital } from '#shared-calc/rule/capital.ts';
import type { HeadView } from '#renderer/bench/view-model.ts';
import { sectionOf } from '#renderer/drawing/section-of.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { showValue } from '#shared-calc/quantity/shown-unit.ts';
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
    size: bench ? sizeWords(bench, key, faces) : '',
    kit: typeof chosen === 'string' ? chosen : '',
    kits: (kit?.options ?? []).map((value) => ({ value, label: `${capital(value)} kit` })),
    count,
    section: sectionOf(faces.lines, tank.shape, ({ name }) => bench?.box(key, name).value),
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

/** `900 × 445 × 600 mm` */
function sizeWords(bench: Bench, column: string, faces: LineFaces): string {
  const sides = (['insideLength', 'insideDepth', 'insideHeight'] as const).map((use) => faces.for(use));
  const parts = sides.map((face) => {
    const value = face && bench.box(column, face.line.name).value;
    return typeof value === 'number' && face ? showValue(value, face.line.unit, faces.display) : '?';
  });
  return `${parts.join(' × ')}\u00a0${sides[0]?.unit ?? 'mm'}`;
}
