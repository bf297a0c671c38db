import { putPrice } from '#shared-calc/acts/price-acts.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import type { BookContext } from '#renderer/books/book-api.ts';
import { oldPriceFlag, type BookColumn, type BookRow, type BookTable } from '#renderer/books/book-table.ts';
import { entryOfCoins, showCoins } from '#shared-calc/quantity/coins-text.ts';
import { insertAfter, recordColumns } from '#renderer/books/record-columns.ts';
import { freshRecord } from '#shared-calc/records/edit-field.ts';
import { nextCode } from '#renderer/books/next-code.ts';
import { isOldPrice, packId, packsOf, priceOn, pricesOf } from '#shared-calc/buy/pack-prices.ts';
import { addRecords, removeRecords } from '#renderer/books/put-record.ts';
import { byCode, codeColumn, recordsOf } from '#renderer/books/record-table.ts';
import { mayGo } from '#renderer/books/uses-of.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import type { Pack, PackPrice, Records, Tank } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { added } from '#shared-calc/records/change.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

/** A tank with its current price. */
export interface TankRow extends BookRow {
  readonly tank: Tank;
  /** The pack of one tank; not in the book until somebody has set a price. */
  readonly pack: Pack;
  readonly price: PackPrice | undefined;
}

export const tankTable: BookTable<TankRow> = {
  label: 'Tank book, one tank a row',
  one: 'tank',
  rows: (context) =>
    recordsOf(context.records, 'tank')
      .toSorted(byCode)
      .map((tank) => rowOf(tank, context)),
  columns: tankColumns,
  nameOf: ({ id, tank }) => `${id} ${tank.label}`.trim(),
  add: (context) => {
    const id = freeCode(context);
    const tank = freshRecord('tank', id, { frontBowMm: 0, sideReturnMm: 0, frontVentMm: 0 });
    return { id, change: addRecords(`new tank ${id}`, [added('tank', tank)]) };
  },
  copy: (context, row) => {
    const id = freeCode(context);
    return { id, change: addRecords(`${id}, a copy of ${row.id}`, [added('tank', { ...row.tank, id })]) };
  },
  remove: ({ records }, rows) => removeTanks(records, rows),
};

function rowOf(tank: Tank, { records, today }: BookContext): TankRow {
  const pack = packsOf(records, tank.id)[0] ?? { id: packId(tank.id, 1), material: tank.id, amount: 1 };
  return { id: tank.id, tank, pack, price: priceOn(records, pack.id, today) };
}

/** Tanks and materials share the price book, so a code must be free in both. */
function freeCode({ records }: BookContext): string {
  return nextCode('T', [...records.tank.keys(), ...records.material.keys()]);
}

function removeTanks(records: Records, rows: readonly TankRow[]): ReturnType<NonNullable<typeof tankTable.remove>> {
  const may = mayGo(
    'tank',
    rows.map(({ id }) => id),
    records,
  );
  if (!may.ok) return may;
  const gone = rows.flatMap(({ id, tank }) => {
    const packs = packsOf(records, id);
    const prices = packs.flatMap((pack) => pricesOf(records, pack.id));
    return [
      ...prices.map((price) => added('packPrice', price)),
      ...packs.map((pack) => added('pack', pack)),
      added('tank', tank),
    ];
  });
  return ok(removeRecords(`${rows.map(({ id }) => id).join(', ')} removed`, gone));
}

function tankColumns(context: BookContext): readonly BookColumn<TankRow>[] {
  const columns = recordColumns<'tank', TankRow>(
    { kind: 'tank', recordOf: ({ tank }) => tank, widths: { figures: 4.25, label: 14.5 } },
    context,
  );
  return [codeColumn(3.5), ...insertAfter(columns, 'supplier', [priceColumn(context), fromColumn])];
}

/** The current price of one tank; a new price is valid from today. */
function priceColumn(context: BookContext): BookColumn<TankRow> {
  const { workshop, today } = context;
  return {
    key: 'price',
    title: 'Price',
    unit: workshop.currency,
    look: 'figure',
    width: 8,
    show: ({ price }) => showCoins(price?.priceCoins, workshop),
    entry: ({ price }) => entryOfCoins(price?.priceCoins, workshop),
    flag: ({ price }) => (price && isOldPrice(price, context) ? oldPriceFlag : undefined),
    write: ({ pack: { material, amount } }, text) => {
      if (text.trim() === '') return failed('A price is not emptied; take it out of the prices at the right.');
      const coins = said(readMoney(text, workshop, 'Price'));
      if (!coins.ok) return coins;
      const done = putPrice.run(context, { material, amount, priceCoins: coins.value, from: today });
      return done.ok ? done : failed(sayActFault(done.fault));
    },
  };
}

const fromColumn: BookColumn<TankRow> = {
  key: 'from',
  title: 'Price from',
  unit: '',
  look: 'words',
  width: 6.5,
  show: ({ price }) => price?.from ?? '',
  entry: ({ price }) => price?.from ?? '',
  closed: 'A new price holds from today; set one from another day in the prices at the right.',
};
