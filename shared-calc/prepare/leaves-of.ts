import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Material, Records } from '#shared-calc/records/records.ts';
import { allLines } from '#shared-calc/recipe/lines-of.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';
import { isLeafNeed } from './leaf-lines.ts';
import { sizeFigures } from './size-figures.ts';

/** Loose litres of leaves for all builds of a bench; `undefined` if one size has no figure, or none has leaves. */
export function leavesOf(bench: Bench): number | undefined {
  let litres = 0;
  for (const { key, count } of bench.input().columns) {
    const figures = sizeFigures(bench, key, plainDisplay);
    if (!figures.has('leavesLoose')) continue;
    const one = figures.number('leavesLoose', 'L');
    if (one === undefined) return undefined;
    litres += one * count;
  }
  return litres > 0 ? cleanNoise(litres) : undefined;
}

/** Materials that are leaves: those of a recipe's leaf lines, and those named as leaves. */
export function leafMaterials(records: RecipeTables & Pick<Records, 'material'>): readonly Material[] {
  const needed = new Set(
    allLines(records)
      .filter(isLeafNeed)
      .map(({ material }) => material),
  );
  return [...records.material.values()].filter(({ id, label }) => needed.has(id) || /\bleaves\b/i.test(label));
}
