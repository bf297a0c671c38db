import { daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import type { Pack, PackPrice, Records, Workshop } from '#shared-calc/records/records.ts';

/** Packs of a material, or of a tank, smallest first. */
export function packsOf({ pack }: Pick<Records, 'pack'>, material: string): readonly Pack[] {
  return packsByMaterial(pack).get(material) ?? [];
}

/** All prices of a pack, the newest first. */
export function pricesOf({ packPrice }: Pick<Records, 'packPrice'>, pack: string): readonly PackPrice[] {
  return pricesByPack(packPrice).get(pack) ?? [];
}

const packsByMaterial = grouped<Pack>(
  ({ material }) => material,
  (a, b) => a.amount - b.amount,
);
const pricesByPack = grouped<PackPrice>(
  ({ pack }) => pack,
  (a, b) => (a.from < b.from ? 1 : -1),
);

type Table<T> = ReadonlyMap<string, T>;

/** Records of a table by a key, each group in order. Cached by table, as a table is immutable. */
function grouped<T>(
  keyOf: (record: T) => string,
  order: (one: T, other: T) => number,
): (table: Table<T>) => ReadonlyMap<string, readonly T[]> {
  const known = new WeakMap<Table<T>, ReadonlyMap<string, readonly T[]>>();
  return (table) => {
    const made = known.get(table) ?? Map.groupBy([...table.values()].toSorted(order), keyOf);
    known.set(table, made);
    return made;
  };
}

/** The price of a pack on a day: the latest from that day or before. */
export function priceOn(records: Pick<Records, 'packPrice'>, pack: string, day: string): PackPrice | undefined {
  return pricesOf(records, pack).find(({ from }) => from <= day);
}

/** True if a price is older than the workshop allows. */
export function isOldPrice(
  { from }: PackPrice,
  { today, workshop }: { readonly today: Day; readonly workshop: Workshop },
): boolean {
  return daysBetween(from, today) > workshop.oldPriceDays;
}

/** The id of a pack, from its material or tank and its amount. */
export function packId(material: string, amount: number): string {
  return `${material}-${amount}`;
}
