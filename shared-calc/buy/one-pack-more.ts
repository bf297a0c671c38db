import { carriageOf, type SupplierBill } from './carriage.ts';
import type { MaterialNeed } from './material-need.ts';
import { soldBy, type PriceBook } from './price-book.ts';

/** One more pack of something already on the order that makes the whole order cheaper, carriage included. */
export interface OnePackMore {
  readonly material: string;
  readonly label: string;
  readonly pack: { readonly id: string; readonly amount: number; readonly unit: string; readonly priceCoins: number };
  readonly landedNowCoins: number;
  readonly landedThenCoins: number;
}

interface Extra extends OnePackMore {
  readonly keeps: boolean;
}

/**
 * The pack that brings a supplier's order to free carriage at the least landed cost, if that is less than now. On a
 * tie, goods that keep come first, then the earlier on the list. Reported, never bought unasked.
 */
export function onePackMore(
  bill: SupplierBill,
  needs: readonly MaterialNeed[],
  prices: PriceBook,
): OnePackMore | undefined {
  let best: Extra | undefined;
  for (const need of needs) {
    if (need.supplier !== bill.supplier || need.sale !== 'packs') continue;
    for (const extra of extrasOf(need, bill, prices)) {
      if (extra.landedThenCoins < extra.landedNowCoins && (!best || isBetter(extra, best))) best = extra;
    }
  }
  if (!best) return undefined;
  const { keeps: _, ...found } = best;
  return found;
}

function extrasOf(need: MaterialNeed, bill: SupplierBill, prices: PriceBook): readonly Extra[] {
  const terms = prices.suppliers.get(bill.supplier);
  if (!terms) return [];
  const { material, label, unit, keeps } = need;
  return (soldBy(prices, need)?.packs ?? []).map(({ id, amount, priceCoins }) => {
    const then = bill.goodsCoins + priceCoins;
    return {
      material,
      label,
      keeps,
      pack: { id, amount, unit, priceCoins },
      landedNowCoins: bill.goodsCoins + bill.carriageCoins,
      landedThenCoins: then + carriageOf(then, terms),
    };
  });
}

function isBetter(one: Extra, than: Extra): boolean {
  if (one.landedThenCoins !== than.landedThenCoins) return one.landedThenCoins < than.landedThenCoins;
  return one.keeps && !than.keeps;
}
