import { daysBetween } from '#shared-calc/calendar/day.ts';
import { packId } from '#shared-calc/papers/import-materials.ts';
import { emptyChange, type Added, type Change } from '#shared-calc/records/change.ts';
import type { Pack, PackPrice, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { BookContext } from './book-hands.ts';
import type { BookFlag } from './book-table.ts';
import { showCoins } from './money-field.ts';
import { ofKind, updateRecord } from './put-record.ts';

/** Packs of a material, or of a tank, smallest first. */
export function packsOf({ pack }: Pick<Records, 'pack'>, material: string): readonly Pack[] {
  return [...pack.values()].filter((each) => each.material === material).toSorted((a, b) => a.amount - b.amount);
}

/** All prices of a pack, the newest first. */
export function pricesOf({ packPrice }: Pick<Records, 'packPrice'>, pack: string): readonly PackPrice[] {
  return [...packPrice.values()].filter((each) => each.pack === pack).toSorted((a, b) => (a.from < b.from ? 1 : -1));
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
  const price = ofKind('packPrice', { id: freePriceId(records, pack.id, from), pack: pack.id, from, priceCoins });
  const added: readonly Added[] = records.pack.has(pack.id) ? [price] : [ofKind('pack', pack), price];
  return ok({ ...emptyChange(label), added });
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
