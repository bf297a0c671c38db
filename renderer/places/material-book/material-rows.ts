import type { BookContext } from '#renderer/books/book-api.ts';
import {
  oldPriceFlag,
  type BookColumn,
  type BookFlag,
  type BookRow,
  type BookTable,
} from '#renderer/books/book-table.ts';
import { packRecords } from '#renderer/books/piece-price.ts';
import { insertAfter, recordColumns } from '#renderer/books/record-columns.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { freshRecord } from '#shared-calc/records/edit-field.ts';
import { nextCode } from '#shared-calc/records/next-code.ts';
import { isOldPrice, packsOf, priceOn } from '#shared-calc/buy/pack-prices.ts';
import { addRecords, removeRecords } from '#renderer/books/put-record.ts';
import { byCode, codeColumn, recordsOf } from '#renderer/books/record-table.ts';
import { mayGo } from '#renderer/books/uses-of.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { contentOf } from '#shared-calc/buy/pack-said.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import type { Material, Pack, PackPrice, Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { added, type Change } from '#shared-calc/records/change.ts';

/** A pack with its current price. */
export interface PricedPack {
  readonly pack: Pack;
  readonly price: PackPrice | undefined;
}

/** A material with its packs, smallest first. */
export interface MaterialRow extends BookRow {
  readonly material: Material;
  readonly packs: readonly PricedPack[];
}

export const materialTable: BookTable<MaterialRow> = {
  label: 'Material book, one material a row',
  one: 'material',
  view: 'material',
  rows: (context) =>
    recordsOf(context.records, 'material')
      .toSorted(byCode)
      .map((material) => rowOf(material, context)),
  columns: materialColumns,
  nameOf: ({ id, material }) => `${id} ${material.label}`.trim(),
  add: (context) => {
    const id = freeCode(context);
    return { id, change: addRecords(`new material ${id}`, [added('material', freshRecord('material', id))]) };
  },
  copy: (context, row) => {
    const id = freeCode(context);
    const packs = row.packs.map(({ pack }) =>
      added('pack', { ...pack, id: pack.id.replace(row.id, id), material: id }),
    );
    return {
      id,
      change: addRecords(`${id}, a copy of ${row.id}`, [added('material', { ...row.material, id }), ...packs]),
    };
  },
  remove: ({ records }, rows) => removeMaterials(records, rows),
};

function rowOf(material: Material, { records, today }: BookContext): MaterialRow {
  const packs = packsOf(records, material.id).map((pack) => ({ pack, price: priceOn(records, pack.id, today) }));
  return { id: material.id, material, packs };
}

function freeCode({ records }: BookContext): string {
  return nextCode('M', [...records.tank.keys(), ...records.material.keys()]);
}

function removeMaterials(records: Records, rows: readonly MaterialRow[]): Result<Change, string> {
  const may = mayGo(
    'material',
    rows.map(({ id }) => id),
    records,
  );
  if (!may.ok) return may;
  const gone = rows.flatMap(({ id, material }) => [...packRecords(records, id), added('material', material)]);
  return ok(removeRecords(`${rows.map(({ id }) => id).join(', ')} removed`, gone));
}

function materialColumns(context: BookContext): readonly BookColumn<MaterialRow>[] {
  const columns = recordColumns<'material', MaterialRow>(
    { kind: 'material', recordOf: ({ material }) => material, widths: { label: 14.5, unit: 4 } },
    context,
  );
  return [codeColumn(5), ...insertAfter(columns, 'unit', [packsColumn(context), fromColumn(context)])];
}

function priceWords(price: PackPrice | undefined, { workshop }: BookContext): string {
  return price ? ` at ${showCoins(price.priceCoins, workshop)}` : '';
}

/** "10 L at 9.80, 45 L at 31.50" */
function packsColumn(context: BookContext): BookColumn<MaterialRow> {
  const say = ({ material, packs }: MaterialRow) =>
    packs
      .map(({ pack, price }) => {
        const { amount, unit } = contentOf(pack, material.unit);
        return `${amount} ${unitWords(unit, '')}${priceWords(price, context)}`;
      })
      .join(', ');
  return {
    key: 'packs',
    title: 'Packs and prices',
    unit: context.workshop.currency,
    look: 'words',
    width: 20,
    show: say,
    entry: say,
    flag: (row) => flagOf(row, context),
    closed: 'Packs and their prices are set at the right.',
  };
}

const noPrice: BookFlag = { sign: 'need', look: 'needs', says: 'needs a price' };

function flagOf({ packs }: MaterialRow, context: BookContext): BookFlag | undefined {
  if (packs.length === 0 || packs.some(({ price }) => price === undefined)) return noPrice;
  return packs.some(({ price }) => price && isOldPrice(price, context)) ? oldPriceFlag : undefined;
}

function fromColumn({ display }: BookContext): BookColumn<MaterialRow> {
  const say = ({ packs }: MaterialRow) => {
    const day = oldestDay(packs);
    return day === undefined ? '' : writeDay(day, display.dateOrder);
  };
  return {
    key: 'from',
    title: 'Prices from',
    unit: '',
    look: 'words',
    width: 6.5,
    show: say,
    entry: say,
    closed: 'The oldest day that one of its prices holds from; prices are set at the right.',
  };
}

function oldestDay(packs: readonly PricedPack[]): string | undefined {
  return packs.flatMap(({ price }) => price?.from ?? []).toSorted()[0];
}
