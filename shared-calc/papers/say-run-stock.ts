import type { RunMaterial, ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import type { Display } from '#shared-calc/quantity/shown-unit.ts';

/** What a run says of the store beside its rows: what a job keeps over its need, and what is bought for the store. */
export function sayRunStock({ materials }: Pick<ShoppingRun, 'materials'>, display: Display): readonly string[] {
  return materials.flatMap((need) => [...sayOver(need, display), ...sayForStore(need, display)]);
}

function sayOver({ material, over, unit }: RunMaterial, display: Display): readonly string[] {
  return [...over].map(
    ([job, amount]) =>
      `${job} keeps ${goodsWords(amount, unit, display)} of ${material} over its need; no other job is given it.`,
  );
}

function sayForStore({ material, forStore, unit }: RunMaterial, display: Display): readonly string[] {
  if (forStore <= 0) return [];
  return [`${goodsWords(forStore, unit, display)} of ${material} are for the store, which would be under its least.`];
}
