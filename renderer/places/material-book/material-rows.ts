import type { BookContext } from '#renderer/books/book-hands.ts';
import {
  oldPriceFlag,
  type BookColumn,
  type BookFlag,
  type BookRow,
  type BookTable,
} from '#renderer/books/book-table.ts';
import { choiceField, plainOptions } from '#renderer/books/choice-field.ts';
import { columnsOf, type Field, type Lifted } from '#renderer/books/field.ts';
import { figureField } from '#renderer/books/figure-field.ts';
import { showCoins } from '#renderer/books/money-field.ts';
import { nextCode } from '#renderer/books/next-code.ts';
import { isOldPrice, packId, packsOf, priceOn, pricesOf } from '#shared-calc/buy/pack-prices.ts';
import { addRecords, removeRecords } from '#renderer/books/put-record.ts';
import { byCode, codeColumn, recordsOf } from '#renderer/books/record-table.ts';
import { supplierField } from '#renderer/books/supplier-field.ts';
import { mayGo } from '#renderer/books/uses-of.ts';
import { unitWords } from '#shared-calc/quantity/unit-words.ts';
import { wordsField } from '#renderer/books/words-field.ts';
import { yesNoField } from '#renderer/books/yes-no-field.ts';
import { findUnit, unitSymbols } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { saleWays } from '#shared-calc/fields/material.ts';
import type { Material, Pack, PackPrice, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { added, type Change } from '#shared-calc/records/change.ts';

/** A pack with what it costs today. */
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
  rows: (context) =>
    recordsOf(context.records, 'material')
      .toSorted(byCode)
      .map((material) => rowOf(material, context)),
  columns: materialColumns,
  nameOf: ({ id, material }) => `${id} ${material.label}`.trim(),
  add: (context) => {
    const id = freeCode(context);
    const material: Material = { id, label: '', unit: 'L', sale: 'packs', keeps: true, note: '' };
    return { id, change: addRecords(`new material ${id}`, [added('material', material)]) };
  },
  copy: (context, row) => {
    const id = freeCode(context);
    const packs = row.packs.map(({ pack }) =>
      added('pack', { id: packId(id, pack.amount), material: id, amount: pack.amount }),
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
  const gone = rows.flatMap(({ material, packs }) => [
    ...packs.flatMap(({ pack }) => pricesOf(records, pack.id)).map((price) => added('packPrice', price)),
    ...packs.map(({ pack }) => added('pack', pack)),
    added('material', material),
  ]);
  return ok(removeRecords(`${rows.map(({ id }) => id).join(', ')} removed`, gone));
}

function materialColumns(context: BookContext): readonly BookColumn<MaterialRow>[] {
  const { records, display } = context;
  const lifted: Lifted<'material', MaterialRow> = {
    kind: 'material',
    recordOf: ({ material }) => material,
    nameOf: ({ id }) => id,
  };
  const fields: readonly Field<Material>[] = [
    wordsField<Material>('label', { title: 'Material', width: 14.5, needed: true }),
    unitField(records),
  ];
  const others: readonly Field<Material>[] = [
    supplierField<Material>(records),
    saleField,
    yesNoField<Material>('keeps', 'Keeps'),
    figureField<Material>(
      'leadDays',
      {
        name: 'Lead',
        title: 'Lead, working days',
        stored: 'each',
        whole: true,
        low: 0,
        high: 365,
        mayBeEmpty: true,
        width: 5.5,
      },
      display,
    ),
    wordsField<Material>('note', { title: 'Note', width: 18 }),
  ];
  return [codeColumn(5), ...columnsOf(lifted, fields), packsColumn(context), fromColumn, ...columnsOf(lifted, others)];
}

/** Packs and stock are counted in the unit, so that it only changes while there are none. */
function unitField(records: Records): Field<Material> {
  const units = unitSymbols.filter((symbol) => findUnit(symbol)?.zero === undefined && symbol !== 'money');
  const field = choiceField<Material>({
    key: 'unit',
    title: 'Unit',
    options: plainOptions(units),
    width: 4,
    get: ({ unit }) => unit,
    put: (material, unit) => ({ ...material, unit: unit ?? material.unit }),
  });
  return {
    ...field,
    show: ({ unit }) => unitWords(unit, ''),
    read: (text, material) => {
      const exact = units.find((unit) => unit === text.trim());
      const read = exact === undefined ? field.read(text, material) : ok({ ...material, unit: exact });
      const isCounted =
        packsOf(records, material.id).length > 0 ||
        [...records.stockEntry.values()].some((entry) => entry.material === material.id);
      if (!read.ok || read.value.unit === material.unit || !isCounted) return read;
      return failed(
        `${material.id} has packs or stock in ${material.unit}, which would no longer be right. Make another material of it.`,
      );
    },
  };
}

const saleField: Field<Material> = choiceField<Material>({
  key: 'sale',
  title: 'Sold',
  options: [
    { value: 'packs', label: 'in packs' },
    { value: 'cut', label: 'cut to size' },
    { value: 'own', label: 'our own' },
  ],
  width: 6.5,
  get: ({ sale }) => sale,
  put: (material, word) => ({ ...material, sale: saleWays.find((way) => way === word) ?? material.sale }),
});

function priceWords(price: PackPrice | undefined, { workshop }: BookContext): string {
  return price ? ` at ${showCoins(price.priceCoins, workshop)}` : '';
}

/** "10 L at 9.80, 45 L at 31.50" */
function packsColumn(context: BookContext): BookColumn<MaterialRow> {
  const say = ({ material, packs }: MaterialRow) =>
    packs
      .map(
        ({ pack, price }) => `${cleanNoise(pack.amount)} ${unitWords(material.unit, '')}${priceWords(price, context)}`,
      )
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

const fromColumn: BookColumn<MaterialRow> = {
  key: 'from',
  title: 'Prices from',
  unit: '',
  look: 'words',
  width: 6.5,
  show: ({ packs }) => oldestDay(packs),
  entry: ({ packs }) => oldestDay(packs),
  closed: 'The oldest day that one of its prices holds from; prices are set at the right.',
};

function oldestDay(packs: readonly PricedPack[]): string {
  return packs.flatMap(({ price }) => price?.from ?? []).toSorted()[0] ?? '';
}
