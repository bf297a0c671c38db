import type { MaterialNeed } from './material-need.ts';
import { NOTHING } from './ledger.ts';
import type { PriceBook } from './price-book.ts';

/** Goods to buy that nobody is named for: they are on no order. */
export interface NoSupplier {
  readonly material: string;
  readonly label: string;
  readonly unit: string;
  /** In the unit of the material. */
  readonly buy: number;
  readonly coins: number;
}

export type BoughtNeed = Pick<
  MaterialNeed,
  'material' | 'label' | 'unit' | 'sale' | 'supplier' | 'packs' | 'packsCoins'
> & {
  readonly toBuy: number;
};

/** Whether something of a material is to be bought; the Store and the orders may have all of it. */
export function isToBuy({ sale, packs, toBuy }: BoughtNeed): boolean {
  return sale === 'packs' ? packs.length > 0 : sale === 'cut' && toBuy > NOTHING;
}

export function hasSupplier({ supplier }: BoughtNeed, { suppliers }: Pick<PriceBook, 'suppliers'>): boolean {
  return supplier !== undefined && suppliers.has(supplier);
}

/** What is to be bought and has no supplier yet, in order of first need. */
export function noSupplier(needs: readonly BoughtNeed[], prices: Pick<PriceBook, 'suppliers'>): readonly NoSupplier[] {
  return needs
    .filter((need) => isToBuy(need) && !hasSupplier(need, prices))
    .map(({ material, label, unit, toBuy: buy, packsCoins: coins }) => ({ material, label, unit, buy, coins }));
}
