import type { StockEntry } from '#shared-calc/records/records.ts';

/** What is on hand, by material, each in its material's unit. */
export type Stock = ReadonlyMap<string, number>;

export const NO_STOCK: Stock = new Map();

/**
 * What the Store can give on a day: nothing reserved for another job, in quarantine, or past its best. Without a job,
 * nothing that is reserved for any.
 */
export function stockOnHand(
  entries: Iterable<StockEntry>,
  { on, jobs = [] }: { readonly on: string; readonly jobs?: readonly string[] },
): Stock {
  const stock = new Map<string, number>();
  for (const entry of entries) {
    const spoken = entry.reservedFor !== undefined && !jobs.includes(entry.reservedFor);
    const inQuarantine = entry.quarantineUntil !== undefined && entry.quarantineUntil > on;
    const past = entry.bestBefore !== undefined && entry.bestBefore < on;
    if (!spoken && !inQuarantine && !past) stock.set(entry.material, (stock.get(entry.material) ?? 0) + entry.amount);
  }
  return stock;
}

/** Gives stock to one size or job, at most what it uses; `left` is for the next ones. */
export function takeStock(
  stock: Stock,
  used: ReadonlyMap<string, number>,
): { readonly taken: Stock; readonly left: Stock } {
  const taken = new Map<string, number>();
  const left = new Map(stock);
  for (const [material, amount] of used) {
    const onHand = stock.get(material);
    if (onHand === undefined) continue;
    const part = Math.max(0, Math.min(onHand, amount));
    taken.set(material, part);
    left.set(material, onHand - part);
  }
  return { taken, left };
}
