import { daysBetween } from '#shared-calc/calendar/day.ts';
import { packId } from '#shared-calc/papers/import-materials.ts';
import { added, emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Pack, PackPrice, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { BookContext } from './book-hands.ts';
import type { BookFlag } from './book-table.ts';
import { showCoins } from './money-field.ts';
import { updateRecord } from './put-record.ts';

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

/** Records of a table by a key, each group in order; made once a table, for a table never changes. */
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

/** The price of a pack that holds on a day: the latest from that day or before. */
export function priceOn(records: Pick<Records, 'packPrice'>, pack: string, day: string): PackPrice | undefined {
  return pricesOf(records, pack).find(({ from }) => from <= day);
}

/** Whether a price has stood longer than the workshop lets pass. */
export function isOldPrice({ from }: PackPrice, { today, workshop }: Pick<BookContext, 'today' | 'workshop'>): boolean {
  return daysBetween(from, today) > workshop.oldPriceDays;
}

export const oldPriceFlag: BookFlag = { sign: 'old', look: 'old', says: 'old price' };

/** A price with the day it holds from. */
export interface NewPrice {
  readonly pack: Pack;
  readonly from: string;
  readonly priceCoins: number;
}

/**
 * A new price is a new record with its from-date, so that what was quoted before stays right; only one of the
 * very same day is put right in place. A pack that is not in the book yet comes with it.
 */
export function putPrice(
  { records, workshop }: BookContext,
  { pack, from, priceCoins }: NewPrice,
): Result<Change, string> {
  const label = `${sayPack(pack)} at ${showCoins(priceCoins, workshop)} from ${from}`;
  const sameDay = pricesOf(records, pack.id).find((price) => price.from === from);
  if (sameDay) return updateRecord(label, 'packPrice', { from: sameDay, to: { ...sameDay, priceCoins } });
  const price = added('packPrice', { id: freePriceId(records, pack.id, from), pack: pack.id, from, priceCoins });
  const made = records.pack.has(pack.id) ? [price] : [added('pack', pack), price];
  return ok({ ...emptyChange(label), added: made });
}

/** A pack that a material has not yet; refused where it has one of that amount, or where there is no amount. */
export function newPack(records: Pick<Records, 'pack'>, material: string, amount: number): Result<Pack, string> {
  if (packsOf(records, material).some((pack) => pack.amount === amount))
    return failed(`${material} has such a pack already.`);
  return ok({ id: packId(material, amount), material, amount });
}

function sayPack({ material, amount }: Pack): string {
  return amount === 1 ? material : `${material} pack of ${amount}`;
}

function freePriceId({ packPrice }: Pick<Records, 'packPrice'>, pack: string, from: string): string {
  const wanted = `${pack}@${from}`;
  for (let turn = 2; ; turn += 1) {
    const id = turn === 2 ? wanted : `${wanted}#${turn}`;
    if (!packPrice.has(id) || turn > 99) return id;
  }
}
