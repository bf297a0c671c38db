import { knownNeeds } from '#shared-calc/bench/order-amounts.ts';
import { orderNeeds, type OrderFault, type Pricing } from '#shared-calc/bench/order-sums.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import { allBuilds } from '#shared-calc/buy/all-builds.ts';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import type { Buying, NeedsList } from '#shared-calc/buy/needs.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import type { Margin } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';

/** A material with the amount each size uses, for all its builds. */
export interface NeedRow {
  readonly need: MaterialNeed;
  /** By column, in the material's unit; what the job needs once is listed at the size that needs most. */
  readonly bySize: ReadonlyMap<string, number>;
}

/** Materials of one quote group. */
export interface NeedGroup {
  readonly label: string;
  readonly rows: readonly NeedRow[];
}

export interface NeedsView {
  readonly list: NeedsList;
  readonly groups: readonly NeedGroup[];
}

export interface NeedsParts {
  readonly bench: Bench;
  readonly columns: readonly Pick<ColumnInput, 'key'>[];
  readonly pricing: Pricing;
  /** What there is of a material; nothing where the Store does not count. */
  readonly supply: Buying['supply'];
  readonly margins: ReadonlyMap<string, Margin>;
}

/** The needs of all sizes of a job together, by quote group in the order of the quote. */
export function needsView({ bench, columns, pricing, supply, margins }: NeedsParts): Result<NeedsView, OrderFault> {
  const keys = columns.map(({ key }) => key);
  const list = orderNeeds(bench, keys, { ...pricing, ...(supply && { supply }) });
  if (!list.ok) return list;
  const { amounts } = knownNeeds(bench, keys, pricing.prices);
  const bySize = new Map<string, Map<string, number>>();
  for (const { material, column, amount } of allBuilds(amounts)) {
    const sizes = bySize.get(material) ?? new Map<string, number>();
    sizes.set(column, (sizes.get(column) ?? 0) + amount);
    bySize.set(material, sizes);
  }
  const rows = list.value.needs.map((need) => ({
    need,
    bySize: bySize.get(need.material) ?? new Map<string, number>(),
  }));
  return ok({ list: list.value, groups: grouped(rows, margins) });
}

function grouped(rows: readonly NeedRow[], margins: ReadonlyMap<string, Margin>): readonly NeedGroup[] {
  const order = (group: string) => margins.get(group)?.order ?? Number.MAX_SAFE_INTEGER;
  return [...Map.groupBy(rows, ({ need }) => need.group)]
    .toSorted(([one], [other]) => order(one) - order(other))
    .map(([group, of]) => ({ label: margins.get(group)?.label ?? group, rows: of }));
}
