import { goodsInLedger, stockOf, type GoodsStock, type LotStock } from '#shared-calc/buy/ledger.ts';
import { packsOf, priceOn } from '#shared-calc/buy/pack-prices.ts';
import { goodsStock } from '#shared-calc/prepare/goods-stock.ts';
import { goodsLabel, unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import type { Derived } from './derived.ts';

export interface StoredLot {
  readonly stock: LotStock;
  /** Paid for one unit; where no price was written, the unit price of the day it came in. Nothing if neither is known. */
  readonly eachCoins: number | undefined;
}

/** Goods of the Store as a person reads them. */
export interface StoredGoods {
  readonly of: string;
  readonly label: string;
  readonly unit: string;
  readonly now: GoodsStock;
  readonly least: number | undefined;
  readonly upTo: number | undefined;
  readonly lots: readonly StoredLot[];
}

/** What lies in the Store, is on order or has a least level, in order of the codes; each by itself. */
export function storeGoods(derived: Derived, use: Day = derived.today): readonly StoredGoods[] {
  const { records, today: asked } = derived;
  const levelled = [...records.material.values()].filter(({ least }) => least !== undefined).map(({ id }) => id);
  const all = new Set([...goodsInLedger(records), ...levelled]);
  return [...all]
    .toSorted()
    .map((of) => goodsWith(derived, of, stockOf(records, [of], { asked, use })))
    .filter(({ now, least }) => now.lots.length > 0 || now.lines.length > 0 || least !== undefined);
}

/** One kind of goods, a class of plants with the plants of that class. */
export function goodsOf(derived: Derived, of: string, use: Day = derived.today): StoredGoods {
  const { records, today: asked } = derived;
  return goodsWith(derived, of, goodsStock(records, of, { asked, use }));
}

function goodsWith({ records }: Derived, of: string, now: GoodsStock): StoredGoods {
  const material = records.material.get(of);
  return {
    of,
    label: goodsLabel(of, records),
    unit: unitInStore(of, records) ?? 'each',
    now,
    least: material?.least,
    upTo: material?.upTo,
    lots: now.lots.map((each) => ({ stock: each, eachCoins: eachCoinsOf(records, each) })),
  };
}

function eachCoinsOf(records: Records, { lot }: LotStock): number | undefined {
  const { coins, amount, on } = lot.came;
  if (coins !== undefined) return amount > 0 ? coins / amount : undefined;
  const smallest = packsOf(records, lot.of).find((pack) => priceOn(records, pack.id, on));
  const price = smallest && priceOn(records, smallest.id, on);
  return smallest && price && price.priceCoins / smallest.amount;
}

export interface StoreValue {
  readonly coins: number;
  /** Goods of which some has no price that is known. */
  readonly notKnown: readonly string[];
}

/** What lies in the Store today at what was paid for it, each lot rounded once. */
export function storeValue(derived: Derived): StoreValue {
  let coins = 0;
  const notKnown = new Set<string>();
  for (const { of, lots } of storeGoods(derived)) {
    for (const { stock: lot, eachCoins } of lots) {
      if (eachCoins === undefined) notKnown.add(of);
      else coins += roundCoins(lot.amount * eachCoins);
    }
  }
  return { coins, notKnown: [...notKnown] };
}
