import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';
import { freeId } from './find-job.ts';

/** Packs that came in: as many as `count`, each of `amount` in the material's unit. */
export interface ReceivedPacks extends Partial<Pick<StockEntry, 'reservedFor' | 'bestBefore' | 'quarantineUntil'>> {
  readonly material: string;
  readonly amount: number;
  readonly count: number;
}

/** The packs that a shopping run buys from a supplier, or from all. What is cut to size never lies in the Store. */
export function packsBought(run: ShoppingRun, supplier?: string): readonly ReceivedPacks[] {
  return run.materials
    .filter((need) => supplier === undefined || need.supplier === supplier)
    .flatMap((need) => need.packs.map(({ amount, count }) => ({ material: need.material, amount, count })));
}

/** Puts packs that came in into the Store, sealed, an entry for each size of pack. */
export function receiveOrder(records: Records, packs: readonly ReceivedPacks[], from: string): Change {
  const next = new Map(records.stockEntry);
  for (const { amount, count, ...pack } of packs) {
    const id = freeId(`K-${pack.material}`, next);
    next.set(id, { ...pack, id, amount: amount * count, sealed: true, note: `${count} x ${amount}, ${from}` });
  }
  return diffRecords(`order of ${from} in`, records, { ...records, stockEntry: next });
}
