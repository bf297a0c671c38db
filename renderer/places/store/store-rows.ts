import type { Day } from '#shared-calc/calendar/day.ts';
import type { StoredGoods } from '#shared-calc/derive/store-goods.ts';

type Lots = Pick<StoredGoods, 'lots'>;

/** The day on which the last of what is in quarantine is out of it. */
export function clearOn({ lots }: Lots): Day | undefined {
  return lots
    .flatMap(({ stock }) => (stock.quarantined ? (stock.lot.came.until ?? []) : []))
    .toSorted()
    .at(-1);
}

/** What is kept for each job, in quarantine and past its best as well. */
export function keptOf({ lots }: Lots): ReadonlyMap<string, number> {
  const kept = new Map<string, number>();
  for (const { stock } of lots) for (const [job, amount] of stock.kept) kept.set(job, (kept.get(job) ?? 0) + amount);
  return kept;
}

/** The earliest best-before day. */
export function bestBeforeOf({ lots }: Lots): Day | undefined {
  return lots.flatMap(({ stock }) => stock.lot.came.bestBefore ?? []).toSorted()[0];
}

/** What is past its best. */
export function pastBest({ lots }: Lots, today: Day): number {
  return lots
    .filter(({ stock }) => (stock.lot.came.bestBefore ?? today) < today)
    .reduce((sum, { stock }) => sum + stock.amount, 0);
}

/** Free and on order come to less than the least that should lie there. */
export function isUnderLeast({ now, least = 0 }: Pick<StoredGoods, 'now' | 'least'>): boolean {
  const ordered = now.lines.reduce((sum, { loose }) => sum + loose, 0);
  return now.free + ordered < least - 1e-9;
}
