import type { Supplier } from '#shared-calc/records/records.ts';
import type { MaterialNeed } from './material-need.ts';
import type { PriceBook } from './price-book.ts';

export interface SupplierBill {
  readonly supplier: string;
  readonly name: string;
  readonly goodsCoins: number;
  readonly carriageCoins: number;
  /** By how much the order is below the supplier's minimum; shown, never added. */
  readonly shortOfMinimumCoins: number;
}

export type CarriageTerms = Pick<Supplier, 'carriageCoins' | 'freeFromCoins'>;

/** Carriage of an order of goods: none from the free-carriage sum on. */
export function carriageOf(goodsCoins: number, { carriageCoins, freeFromCoins }: CarriageTerms): number {
  return freeFromCoins !== undefined && goodsCoins >= freeFromCoins ? 0 : carriageCoins;
}

/** A bill for each supplier with something to buy, in order of first need. Own goods are never bought. */
export function supplierBills(needs: readonly MaterialNeed[], book: PriceBook): readonly SupplierBill[] {
  const goods = new Map<string, number>();
  for (const need of needs) {
    if (need.supplier === undefined || !isBought(need)) continue;
    goods.set(need.supplier, (goods.get(need.supplier) ?? 0) + need.packsCoins);
  }
  return [...goods].flatMap(([id, goodsCoins]) => {
    const supplier = book.suppliers.get(id);
    return supplier ? [billOf(supplier, goodsCoins)] : [];
  });
}

export function carriageSum(bills: readonly SupplierBill[]): number {
  return bills.reduce((sum, bill) => sum + bill.carriageCoins, 0);
}

/** The carriage that stays when the missing prices are known: by then, that of some suppliers may be free. */
export function carriageKnown(
  bills: readonly SupplierBill[],
  { suppliers }: PriceBook,
  missing: readonly unknown[],
): number {
  const mayBeFree = ({ supplier }: SupplierBill) => suppliers.get(supplier)?.freeFromCoins !== undefined;
  return carriageSum(missing.length === 0 ? bills : bills.filter((bill) => !mayBeFree(bill)));
}

/** What a supplier asks for goods of this sum. */
function billOf(supplier: Supplier, goodsCoins: number): SupplierBill {
  return {
    supplier: supplier.id,
    name: supplier.name,
    goodsCoins,
    carriageCoins: carriageOf(goodsCoins, supplier),
    shortOfMinimumCoins: Math.max(0, (supplier.minimumCoins ?? 0) - goodsCoins),
  };
}

/** Own goods and what the Store has are not. */
export function isBought(need: MaterialNeed): boolean {
  return need.sale === 'cut' ? need.packsCoins > 0 : need.sale === 'packs' && need.packs.length > 0;
}
