import type { Day } from '#shared-calc/calendar/day.ts';
import { goodsLabel, unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';

/** The stock of one material, in its own unit. */
export interface StoreRow {
  readonly material: string;
  readonly label: string;
  readonly unit: string;
  readonly sealed: number;
  readonly opened: number;
  /** The amount that any job can be given today. */
  readonly free: number;
  /** Reserved for jobs, in order of the entries. */
  readonly kept: readonly { readonly job: string; readonly amount: number }[];
  readonly inQuarantine: number;
  readonly pastBest: number;
  /** The earliest best-before day. */
  readonly bestBefore: Day | undefined;
  readonly entries: readonly StockEntry[];
}

type StoreRecords = Pick<Records, 'stockEntry' | 'material' | 'tank' | 'plant'>;

/** The Store by material, in order of their codes. */
export function storeRows(records: StoreRecords, today: Day): readonly StoreRow[] {
  const byMaterial = Map.groupBy(records.stockEntry.values(), (entry) => entry.material);
  return [...byMaterial]
    .toSorted(([one], [other]) => (one < other ? -1 : 1))
    .map(([material, entries]) => rowOf(material, entries, records, today));
}

function rowOf(material: string, entries: readonly StockEntry[], records: StoreRecords, today: Day): StoreRow {
  const sum = (which: (entry: StockEntry) => boolean) =>
    entries.filter(which).reduce((all, { amount }) => all + amount, 0);
  return {
    material,
    label: goodsLabel(material, records),
    unit: unitOfGoods(material, records) ?? 'each',
    sealed: sum(({ sealed }) => sealed),
    opened: sum(({ sealed }) => !sealed),
    free: sum((entry) => entry.reservedFor === undefined && !isHeld(entry, today) && !isPast(entry, today)),
    kept: keptFor(entries),
    inQuarantine: sum((entry) => isHeld(entry, today)),
    pastBest: sum((entry) => isPast(entry, today)),
    bestBefore: entries.flatMap(({ bestBefore }) => bestBefore ?? []).toSorted()[0],
    entries: entries.toSorted((one, other) => (one.id < other.id ? -1 : 1)),
  };
}

/** Still in quarantine on a day. */
export function isHeld({ quarantineUntil }: StockEntry, today: Day): boolean {
  return quarantineUntil !== undefined && quarantineUntil > today;
}

/** Past its best-before day. */
export function isPast({ bestBefore }: StockEntry, today: Day): boolean {
  return bestBefore !== undefined && bestBefore < today;
}

function keptFor(entries: readonly StockEntry[]): StoreRow['kept'] {
  const jobs = Map.groupBy(
    entries.filter(({ reservedFor }) => reservedFor !== undefined),
    ({ reservedFor }) => reservedFor ?? '',
  );
  return [...jobs].map(([job, kept]) => ({ job, amount: kept.reduce((sum, { amount }) => sum + amount, 0) }));
}
