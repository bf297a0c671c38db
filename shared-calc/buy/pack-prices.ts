import { daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import type { Pack, PackPrice, Records, Workshop } from '#shared-calc/records/records.ts';

/** Packs of a material, a tank or a plant, smallest first. */
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

/** Who a pack is bought from: its own supplier, else whoever its material or tank is usually bought from. */
export function sellerOf(
  records: Pick<Records, 'material' | 'tank'>,
  { material, supplier }: Pack,
): string | undefined {
  return supplier ?? usualSupplier(records, material);
}

/** Who a material or a tank is usually bought from; quotes are priced by what that supplier asks. */
export function usualSupplier({ material, tank }: Pick<Records, 'material' | 'tank'>, of: string): string | undefined {
  return material.get(of)?.supplier ?? tank.get(of)?.supplier;
}

/** Everybody who sells a pack of it. */
export function sellersOf(records: Pick<Records, 'pack' | 'material' | 'tank'>, material: string): readonly string[] {
  return [...new Set(packsOf(records, material).flatMap((pack) => sellerOf(records, pack) ?? []))];
}

export interface PackAsked {
  readonly material: string;
  readonly amount: number;
  /** Left out: of the usual supplier, else of any. */
  readonly supplier?: string | undefined;
}

/** A material's pack of this amount. */
export function findPack(
  records: Pick<Records, 'pack' | 'material' | 'tank'>,
  { material, amount, supplier }: PackAsked,
): Pack | undefined {
  const packs = packsOf(records, material).filter((pack) => isAmount(pack, amount));
  const asked = supplier ?? usualSupplier(records, material);
  const found = packs.find((pack) => sellerOf(records, pack) === asked);
  return found ?? (supplier === undefined ? packs[0] : undefined);
}

function isAmount(pack: Pack, amount: number): boolean {
  return Math.abs(pack.amount - amount) <= 1e-9 * Math.max(1, amount);
}

/** The id of a pack, from its material or tank and its amount. */
export function packId(material: string, amount: number): string {
  return `${material}-${amount}`;
}
