import { wholeSums } from '#shared-calc/bench/order-sums.ts';
import type { PricedSize } from '#renderer/curves/price-spec.ts';
import { boxFor } from '#shared-calc/bench/figure-for.ts';
import { calledOf } from '#shared-calc/recipe/column.ts';
import type { WorkedBench } from '#renderer/store/worked-bench.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { shownUnit, type Display } from '#shared-calc/quantity/shown-unit.ts';

/** Sizes on the bench with a known inside and price; for a column of several builds, the price of one. */
export function pricedSizes(worked: WorkedBench, display: Display): readonly PricedSize[] {
  const uses = ['floorArea', 'insideHeight'] as const;
  return worked.source().columns.flatMap((column) => {
    if (!worked.isWorked(column.key)) return [];
    const [floor, height] = uses.map((use) => boxFor(worked.bench(), column.key, use)?.value);
    const sums = wholeSums(worked.sums(column.key));
    if (typeof floor !== 'number' || typeof height !== 'number' || floor * height <= 0 || !sums.ok) return [];
    const room = fromBase(floor * height, unitOf(shownUnit('L', display)));
    const coins = sums.value.quote.grossCoins / column.count;
    return [{ size: calledOf(column), room, price: coins / 10 ** (display.moneyDecimals ?? 2) }];
  });
}
