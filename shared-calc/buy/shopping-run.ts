import { ok, type Result } from '#shared-calc/result.ts';
import { pooledBuilds } from './all-builds.ts';
import type { BuyFault } from './buy-fault.ts';
import type { SupplierBill } from './carriage.ts';
import type { MaterialNeed, Use } from './material-need.ts';
import { byMaterial, listNeeds, type Buying, type NeedAmount, type NeedsList } from './needs.ts';
import { onePackMore, type OnePackMore } from './one-pack-more.ts';
import type { PriceBook } from './price-book.ts';
import { takeStock } from './stock.ts';

/** One part of a run, compared with buying it separately: one size with all its builds, or one job. */
export interface RunPart {
  readonly id: string;
  /** Parts of one job share what is counted once for it. */
  readonly job: string;
  readonly needs: readonly NeedAmount[];
}

/** As on a needs list; `costCoins` is the price of its packs (or cut pieces). */
export interface RunMaterial extends MaterialNeed {
  /** The cost if each part were bought by itself. */
  readonly aloneCoins: number;
}

export interface RunSupplier extends SupplierBill {
  readonly better?: OnePackMore;
}

export interface ShoppingRun {
  readonly materials: readonly RunMaterial[];
  readonly suppliers: readonly RunSupplier[];
  readonly togetherCoins: number;
  readonly aloneCoins: number;
  /** Including carriage. */
  readonly landedTogetherCoins: number;
  readonly landedAloneCoins: number;
  /** No other suppliers land the run for less; else it is the best that was found. */
  readonly proven: boolean;
}

export interface RunBuying extends Omit<Buying, 'any'> {
  /** Suppliers taken by hand, by material. */
  readonly from?: ReadonlyMap<string, string>;
}

/**
 * One shopping run over sizes or jobs: stock is taken off the total, then the total is rounded up to whole packs once.
 * Also gives what each part would cost alone, with stock given out in their order. Own goods are never on it. Each
 * material comes from one supplier, so chosen that all of it lands for the least.
 */
export function shoppingRun(parts: readonly RunPart[], asked: RunBuying): Result<ShoppingRun, BuyFault> {
  const { from, ...buying } = asked;
  const bought = buying.prices.goods;
  const toBuy = parts.map((part) => ({
    ...part,
    needs: part.needs.filter((need) => bought.get(need.material)?.sale !== 'own'),
  }));
  const together = listNeeds(togetherUses(toBuy), { ...buying, any: { from, compare: true } });
  if (!together.ok) return together;
  const alone = eachAlone(toBuy, { ...buying, any: { from, compare: false } });
  return alone.ok ? ok(runOf(together.value, alone.value, buying.prices)) : alone;
}

function togetherUses(parts: readonly RunPart[]): readonly Use[] {
  const jobs = Map.groupBy(parts, (part) => part.job);
  return [...jobs.values()].flatMap((ofJob) => pooledBuilds(ofJob.flatMap((part) => part.needs)));
}

function eachAlone(parts: readonly RunPart[], buying: Buying): Result<readonly NeedsList[], BuyFault> {
  const lists: NeedsList[] = [];
  let stock = buying.stock;
  for (const part of parts) {
    const uses = pooledBuilds(part.needs);
    const { taken, left } = takeStock(stock, amounts(uses));
    const list = listNeeds(uses, { ...buying, stock: taken });
    if (!list.ok) return list;
    lists.push(list.value);
    stock = left;
  }
  return ok(lists);
}

function amounts(uses: readonly Use[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const [material, each] of byMaterial(uses, undefined)) {
    sums.set(
      material,
      each.reduce((sum, use) => sum + use.amount, 0),
    );
  }
  return sums;
}

function runOf(together: NeedsList, alone: readonly NeedsList[], prices: PriceBook): ShoppingRun {
  const aloneCoins = aloneByMaterial(alone);
  return {
    materials: together.needs.map((need) => ({
      ...need,
      costCoins: need.packsCoins,
      aloneCoins: aloneCoins.get(need.material) ?? 0,
    })),
    suppliers: together.suppliers.map((bill) => withBetter(bill, together.needs, prices)),
    togetherCoins: together.packsTotalCoins,
    aloneCoins: alone.reduce((sum, list) => sum + list.packsTotalCoins, 0),
    landedTogetherCoins: together.landedCoins,
    landedAloneCoins: alone.reduce((sum, list) => sum + list.landedCoins, 0),
    proven: together.proven ?? true,
  };
}

function aloneByMaterial(alone: readonly NeedsList[]): ReadonlyMap<string, number> {
  const coins = new Map<string, number>();
  for (const need of alone.flatMap((list) => list.needs)) {
    coins.set(need.material, (coins.get(need.material) ?? 0) + need.packsCoins);
  }
  return coins;
}

function withBetter(bill: SupplierBill, needs: readonly MaterialNeed[], prices: PriceBook): RunSupplier {
  const better = onePackMore(bill, needs, prices);
  return { ...bill, ...(better && { better }) };
}

/** The goods of a run that are bought, of one supplier or of all; what the Store has is not. */
export function boughtIn({ materials }: Pick<ShoppingRun, 'materials'>, supplier?: string): readonly string[] {
  return materials
    .filter((need) => need.packs.length > 0 || need.costCoins > 0)
    .filter((need) => supplier === undefined || need.supplier === supplier)
    .map(({ material }) => material);
}
