import { ok, type Result } from '#shared-calc/result.ts';
import { pooledBuilds } from './all-builds.ts';
import { NOTHING_GIVEN, type AllottedGoods } from './allot.ts';
import { NOTHING } from './ledger.ts';
import { missingPrices, type Guess, type Missing } from './missing.ts';
import type { BuyFault } from './buy-fault.ts';
import { carriageKnown, type SupplierBill } from './carriage.ts';
import type { MaterialNeed, Supply, Use } from './material-need.ts';
import { byMaterial, listNeeds, type Buying, type NeedAmount, type NeedsList } from './needs.ts';
import { onePackMore, type OnePackMore } from './one-pack-more.ts';
import type { PriceBook } from './price-book.ts';
import { NO_STOCK, takeStock } from './stock.ts';

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
  /** Kept in the Store for the jobs of the run, usable on their day. */
  readonly kept: ReadonlyMap<string, number>;
  /** What a job keeps over its need; lent to no other. */
  readonly over: ReadonlyMap<string, number>;
  /** Ordered already, for them or for nobody. */
  readonly coming: number;
  /** What was not there and not ordered, with what the Store asks for. */
  readonly toBuy: number;
  /** Bought with it, because the Store would be under its least level. */
  readonly forStore: number;
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
  /** Prices that are not known of what is to be bought: the sums are at least what they say. */
  readonly missing: readonly Missing[];
  /** Prices that nobody asked a supplier for. */
  readonly guesses: readonly Guess[];
}

export interface RunBuying extends Omit<Buying, 'any'> {
  /** Suppliers taken by hand, by material. */
  readonly from?: ReadonlyMap<string, string>;
}

/** What is given to the parts of a run before anything is bought. */
export interface GivenGoods {
  readonly goods: ReadonlyMap<string, AllottedGoods>;
  /** By job, and of each material. */
  readonly given: ReadonlyMap<string, ReadonlyMap<string, Supply>>;
  /** What is bought for the Store, by material. */
  readonly forStore: ReadonlyMap<string, number>;
}

/**
 * One shopping run over sizes or jobs: what is there is taken off the total, then the total is rounded up to whole packs
 * once. Also gives what each part would cost alone: with what was given to it, or else with the stock in their order.
 * What is bought for the Store counts as a part of its own. Own goods are never on it. Each material comes from one
 * supplier, so chosen that all of it lands for the least.
 */
export function shoppingRun(
  parts: readonly RunPart[],
  asked: RunBuying,
  given?: GivenGoods,
): Result<ShoppingRun, BuyFault> {
  const { from, ...bought } = asked;
  const buying = { ...bought, any: { from, compare: false } };
  const { goods } = buying.prices;
  const toBuy = parts.map((part) => ({
    ...part,
    needs: part.needs.filter((need) => goods.get(need.material)?.sale !== 'own'),
  }));
  const uses = [...togetherUses(toBuy), ...storeUses(given)];
  const supply = given && { supply: (of: string) => pooled(given, of) };
  const together = listNeeds(uses, { ...buying, ...supply, any: { from, compare: true } });
  if (!together.ok) return together;
  const alone = given ? eachGiven(toBuy, buying, given) : eachAlone(toBuy, buying);
  return alone.ok ? ok(runOf(together.value, alone.value, { prices: buying.prices, given })) : alone;
}

function togetherUses(parts: readonly RunPart[]): readonly Use[] {
  const jobs = Map.groupBy(parts, (part) => part.job);
  return [...jobs.values()].flatMap((ofJob) => pooledBuilds(ofJob.flatMap((part) => part.needs)));
}

/** What the Store alone asks for has no use, so it is listed by a use of its own that is taken off again. */
function storeUses(given: GivenGoods | undefined): readonly Use[] {
  return [...(given?.forStore ?? [])].map(([material, amount]) => ({ material, group: STORE, amount }));
}

const STORE = '';

function pooled({ goods }: GivenGoods, material: string): Supply | undefined {
  const of = goods.get(material);
  return of && { stock: of.given, coming: of.coming, cut: of.given, beside: of.onHand - of.given };
}

function eachGiven(
  parts: readonly RunPart[],
  buying: Buying,
  given: GivenGoods,
): Result<readonly NeedsList[], BuyFault> {
  const lists: NeedsList[] = [];
  for (const part of parts) {
    const supply = (material: string) => given.given.get(part.job)?.get(material);
    const list = listNeeds(pooledBuilds(part.needs), { ...buying, stock: NO_STOCK, supply });
    if (!list.ok) return list;
    lists.push(list.value);
  }
  if (given.forStore.size === 0) return ok(lists);
  const store = listNeeds(storeUses(given), { ...buying, stock: NO_STOCK });
  return store.ok ? ok([...lists, store.value]) : store;
}

function eachAlone(parts: readonly RunPart[], buying: Buying): Result<readonly NeedsList[], BuyFault> {
  const lists: NeedsList[] = [];
  let stock = buying.stock;
  for (const part of parts) {
    const uses = pooledBuilds(part.needs);
    const { taken, left } = takeStock(stock, usedAmounts(uses));
    const list = listNeeds(uses, { ...buying, stock: taken });
    if (!list.ok) return list;
    lists.push(list.value);
    stock = left;
  }
  return ok(lists);
}

/** What some uses come to, by material. */
export function usedAmounts(uses: readonly Use[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const [material, each] of byMaterial(uses, undefined)) {
    sums.set(
      material,
      each.reduce((sum, use) => sum + use.amount, 0),
    );
  }
  return sums;
}

interface RunTerms {
  readonly prices: PriceBook;
  readonly given: GivenGoods | undefined;
}

function runOf(together: NeedsList, alone: readonly NeedsList[], { prices, given }: RunTerms): ShoppingRun {
  const aloneCoins = aloneByMaterial(alone);
  const materials = together.needs.map((need) => runMaterial(need, aloneCoins, given));
  const missing = missingPrices(materials);
  const { packsTotalCoins } = together;
  return {
    materials,
    suppliers: together.suppliers.map((bill) => withBetter(bill, together.needs, prices)),
    togetherCoins: packsTotalCoins,
    aloneCoins: alone.reduce((sum, list) => sum + list.packsTotalCoins, 0),
    landedTogetherCoins: packsTotalCoins + carriageKnown(together.suppliers, prices, missing),
    landedAloneCoins: alone.reduce((sum, list) => sum + list.landedCoins, 0),
    proven: together.proven ?? true,
    missing,
    guesses: together.guesses,
  };
}

function runMaterial(
  need: MaterialNeed,
  aloneCoins: ReadonlyMap<string, number>,
  given: GivenGoods | undefined,
): RunMaterial {
  const goods = given ? (given.goods.get(need.material) ?? NOTHING_GIVEN) : { ...NOTHING_GIVEN, given: need.onHand };
  const forStore = given?.forStore.get(need.material) ?? 0;
  const toBuy = Math.max(0, need.used - goods.given - goods.coming);
  const { lacks, ...known } = need;
  return {
    ...known,
    // What is there already needs no price.
    ...(lacks && toBuy > NOTHING && { lacks }),
    // The use of the Store is no use of a job, and is there afterwards.
    used: need.used - forStore,
    leftOver: need.leftOver + forStore,
    costCoins: need.packsCoins,
    aloneCoins: aloneCoins.get(need.material) ?? 0,
    kept: goods.kept,
    over: goods.over,
    coming: goods.coming,
    toBuy,
    forStore,
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
