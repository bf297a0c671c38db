import type { Day } from '#shared-calc/calendar/day.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import { sizeFigures } from '#shared-calc/papers/size-figures.ts';
import { isLeafNeed } from '#shared-calc/prepare/leaf-lines.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Job, Material, Records } from '#shared-calc/records/records.ts';

/** Loose litres of leaves that all builds of a job take; `undefined` where its recipe does not reckon them. */
export function jobLeaves(records: Records, job: Job, on: Day): number | undefined {
  const { bench } = openJob(records, job, on);
  let litres = 0;
  for (const { key, count } of bench.input().columns) {
    litres += (sizeFigures(bench, key, plainDisplay).number('leavesLoose', 'L') ?? 0) * count;
  }
  return litres > 0 ? cleanNoise(litres) : undefined;
}

/** Materials that are leaves: what a recipe's leaf lines ask for, and what is called so. */
export function leafMaterials(records: Pick<Records, 'material' | 'line'>): readonly Material[] {
  const asked = new Set([...records.line.values()].filter(isLeafNeed).map(({ material }) => material));
  return [...records.material.values()].filter(({ id, label }) => asked.has(id) || /\bleaves\b/i.test(label));
}
