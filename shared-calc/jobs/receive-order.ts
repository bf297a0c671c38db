import type { ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';
import { freeId } from './find-job.ts';

/** Received packs: `count` of them, each of `amount` in the material's unit. */
export interface ReceivedPacks extends Partial<Pick<StockEntry, 'reservedFor' | 'bestBefore' | 'quarantineUntil'>> {
  readonly material: string;
  readonly amount: number;
  readonly count: number;
}

/** The packs that a shopping run buys, from one supplier or from all. Goods cut to size are never in the Store. */
export function packsBought(run: ShoppingRun, supplier?: string): readonly ReceivedPacks[] {
  return run.materials
    .filter((need) => supplier === undefined || need.supplier === supplier)
    .flatMap((need) => need.packs.map(({ amount, count }) => ({ material: need.material, amount, count })));
}

/** Puts received packs into the Store, sealed, with an entry for each size of pack. */
export function receiveOrder(records: Records, packs: readonly ReceivedPacks[], from: string): Change {
  const next = new Map(records.stockEntry);
  for (const { amount, count, ...pack } of packs) {
    const id = freeId(`K-${pack.material}`, next);
    next.set(id, { ...pack, id, amount: amount * count, sealed: true, note: `${count} x ${amount}, ${from}` });
  }
  return diffRecords(`order of ${from} in`, records, { ...records, stockEntry: next });
}
