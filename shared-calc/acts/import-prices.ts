import { findPack, packsOf, priceOn } from '#shared-calc/buy/pack-prices.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import type { CsvRow } from '#shared-calc/read/csv-rows.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { added, updated, type Change } from '#shared-calc/records/change.ts';
import type { Pack, PackPrice, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { importList, unitOfRow, type ListImport, type ReadRow, type RowFault } from './import-list.ts';

export interface TakenPrice {
  readonly row: number;
  readonly material: string;
  readonly pack: number;
  readonly unit: string;
  readonly from: string;
  readonly priceCoins: number;
  /** The price of the pack before that day; left out if it had none. */
  readonly beforeCoins?: number;
}

const priceHeadings = ['material', 'pack', 'unit', 'price', 'from'] as const;

/**
 * Reads a price list: rows of material, pack, unit, price, from, and supplier where it is not the usual one. The code of
 * a tank or a plant is a material with one pack of 1 each. A price of the same pack and day is corrected; any other price is a new record with its from-date.
 */
export function importPrices(text: string, records: Records): ListImport<TakenPrice> {
  const list = importList(text, {
    many: 'prices',
    label: 'price list',
    needs: priceHeadings,
    readRow: (row) => readRow(row, records),
  });
  const label = list.refused.length > 0 ? 'price list' : `${list.taken.length} prices of a price list`;
  return { ...list, change: { ...list.change, label } };
}

function readRow({ row, fields }: CsvRow, records: Records): Result<ReadRow<TakenPrice>, RowFault> {
  const { material: code = '', pack: size = '', unit = '', price = '', from = '', supplier = '' } = fields;
  const pack = packOfRow({ code, size, unit, supplier }, records);
  if (!pack.ok) return pack;
  const { priceCoins, from: day } = recordFields.packPrice;
  const coins = readMoney(price, workshopOf(records), priceCoins.heading);
  if (!coins.ok) return failed({ kind: 'bad-field', code, fault: coins.fault });
  const on = readDay(from, day.heading);
  if (!on.ok) return failed({ kind: 'bad-field', code, fault: on.fault });
  return ok(pricedRow(row, pack.value, { from: on.value, priceCoins: coins.value }, records));
}

function pricedRow(
  row: number,
  pack: Pack,
  price: Pick<PackPrice, 'from' | 'priceCoins'>,
  records: Records,
): ReadRow<TakenPrice> {
  const before = priceOn(records, pack.id, price.from);
  const sameDay = before?.from === price.from ? before : undefined;
  const record = { id: sameDay?.id ?? `${pack.id}@${price.from}`, pack: pack.id, ...price };
  const { material, amount } = pack;
  return {
    taken: {
      row,
      material,
      pack: amount,
      unit: unitOfGoods(material, records) ?? 'each',
      ...price,
      ...(before && { beforeCoins: before.priceCoins }),
    },
    id: record.id,
    called: `The price of ${material} from ${price.from}`,
    change: changeOf(sameDay, record),
  };
}

function changeOf(before: PackPrice | undefined, record: PackPrice): Pick<Change, 'added' | 'updated'> {
  if (!before) return { added: [added('packPrice', record)], updated: [] };
  const isSame = before.priceCoins === record.priceCoins;
  return { added: [], updated: isSame ? [] : [updated('packPrice', before, record)] };
}

interface PackWritten {
  readonly code: string;
  readonly size: string;
  readonly unit: string;
  /** Empty: the usual one. */
  readonly supplier: string;
}

function packOfRow({ code, size, unit, supplier }: PackWritten, records: Records): Result<Pack, RowFault> {
  const own = unitOfRow(code, unit, records);
  if (!own.ok) return own;
  const { heading: name, low } = recordFields.pack.amount;
  const read = readMeasure(size, { name, stored: own.value, shown: unit, low }, workshopOf(records));
  if (!read.ok) return failed({ kind: 'bad-field', code, fault: read.fault });
  const amount = read.value ?? 0;
  const found = findPack(records, { material: code, amount, ...(supplier !== '' && { supplier }) });
  if (found) return ok(found);
  const packs = packsOf(records, code).map((pack) => pack.amount);
  return failed({ kind: 'no-such-pack', code, amount, unit: own.value, packs });
}
