import { failed, ok, type Result } from '#shared-calc/result.ts';
import { pooledBuilds, type BuildAmount } from './all-builds.ts';
import type { BuyFault } from './buy-fault.ts';
import { carriageKnown, supplierBills, type SupplierBill } from './carriage.ts';
import { guessedPrices, missingPrices, type Guess, type Missing } from './missing.ts';
import { materialNeed, type MaterialNeed, type Supply, type Use } from './material-need.ts';
import { chooseOffers, type AnySupplier } from './choose-offers.ts';
import { goodsIn, offersIn, type Goods, type PriceBook } from './price-book.ts';
import type { Stock } from './stock.ts';

/** The amount of a need line in one column, for one build, in the material's unit. */
export interface NeedAmount extends BuildAmount {
  /** A material's id, or the code of the column's tank. */
  readonly material: string;
  readonly group: string;
}

export interface Buying {
  readonly prices: PriceBook;
  readonly stock: Stock;
  /** What there is of a material, if more is known than its stock. */
  readonly supply?: (material: string) => Supply | undefined;
  /** Only these materials, if given; totals and carriage too. */
  readonly materials?: readonly string[] | undefined;
  /** Left out: each from its usual supplier. */
  readonly any?: AnySupplier;
}

export interface NeedsList {
  /** By material, in order of first need; materials with no need are left out. */
  readonly needs: readonly MaterialNeed[];
  readonly suppliers: readonly SupplierBill[];
  readonly totalCoins: number;
  /** Packs cost of all materials; cut and own goods at used cost. */
  readonly packsTotalCoins: number;
  /** Packs cost plus the carriage on what is bought. */
  readonly landedCoins: number;
  /** No other suppliers land for less; left out where each is the usual one. */
  readonly proven?: boolean;
  /** Prices that are not known: the sums are at least what they say. */
  readonly missing: readonly Missing[];
  /** Prices that nobody asked a supplier for. */
  readonly guesses: readonly Guess[];
}

/** The needs list of one job, all its columns together. */
export function needsOf(needs: readonly NeedAmount[], buying: Buying): Result<NeedsList, BuyFault> {
  return listNeeds(pooledBuilds(needs), buying);
}

/** A needs list from uses that are already for all builds. */
export function listNeeds(uses: readonly Use[], buying: Buying): Result<NeedsList, BuyFault> {
  const unknown = buying.materials?.find((material) => !buying.prices.goods.has(material));
  if (unknown !== undefined) return failed({ kind: 'unknown-material', material: unknown });
  const all: (readonly MaterialNeed[])[] = [];
  for (const [material, wanted] of byMaterial(uses, buying.materials)) {
    all.push(needsFrom(material, wanted, buying));
  }
  if (!buying.any) return ok(withTotals(all.flat(), buying.prices));
  const { needs, proven } = chooseOffers(all, buying.prices, buying.any);
  return ok({ ...withTotals(needs, buying.prices), proven });
}

/** The need as each supplier would meet it, the usual one first; only as the usual one would where others do not count. */
function needsFrom(material: string, wanted: readonly Use[], buying: Buying): readonly MaterialNeed[] {
  const supply = buying.supply?.(material) ?? { stock: buying.stock.get(material) ?? 0 };
  return goodsFor(material, wanted, buying).map((goods) => materialNeed(goods, wanted, supply));
}

function goodsFor(material: string, [first]: readonly Use[], { prices, any }: Buying): readonly Goods[] {
  const offers = any ? offersIn(prices, material) : [];
  return offers.length > 0 ? offers : [goodsIn(prices, { ...first, material })];
}

/** Uses by material, without binary noise and without materials that are not asked for. */
export function byMaterial(
  uses: readonly Use[],
  materials: readonly string[] | undefined,
): ReadonlyMap<string, readonly Use[]> {
  const listed = materials && new Set(materials);
  return Map.groupBy(
    uses.filter((use) => use.amount > 1e-9 && (!listed || listed.has(use.material))),
    (use) => use.material,
  );
}

function withTotals(needs: readonly MaterialNeed[], prices: PriceBook): NeedsList {
  const suppliers = supplierBills(needs, prices);
  const missing = missingPrices(needs);
  const packsTotalCoins = needs.reduce((sum, need) => sum + need.packsCoins, 0);
  return {
    needs,
    suppliers,
    totalCoins: needs.reduce((sum, need) => sum + need.costCoins, 0),
    packsTotalCoins,
    landedCoins: packsTotalCoins + carriageKnown(suppliers, prices, missing),
    missing,
    guesses: guessedPrices(needs),
  };
}
