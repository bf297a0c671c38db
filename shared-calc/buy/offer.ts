import type { PackCount } from '#shared-calc/trade/buying/pack-mix.ts';

/** What one supplier would sell of a material for a run. */
export interface Offer {
  readonly supplier: string;
  readonly name: string;
  readonly packs: readonly PackCount[];
  /** The goods alone. */
  readonly coins: number;
  /** Goods and carriage of the whole run if it is taken, everything else to the least. */
  readonly landedCoins: number;
  readonly taken: boolean;
  /** The least of those that are not taken. */
  readonly secondBest: boolean;
}
