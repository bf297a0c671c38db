import type { BookContext } from '#renderer/books/book-api.ts';
import {
  oldPriceFlag,
  type BookColumn,
  type BookFlag,
  type BookRow,
  type BookTable,
} from '#renderer/books/book-table.ts';
import { updateRecord } from '#renderer/books/put-record.ts';
import { newPack, putPrice } from '#shared-calc/acts/price-acts.ts';
import { writeDay } from '#shared-calc/calendar/write-day.ts';
import { isOldPrice, packId, pricesOf, usualSupplier } from '#shared-calc/buy/pack-prices.ts';
import { allOpenPrices, openPrice, openPricesOf, type OpenPrice } from '#shared-calc/derive/open-prices.ts';
import { entryOfCoins, showCoins } from '#shared-calc/quantity/coins-text.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { isMarkOf, takeMoneyApart } from '#shared-calc/read/list-money.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { readMeasure } from '#shared-calc/read/read-measure.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import type { Change } from '#shared-calc/records/change.ts';
import { editField } from '#shared-calc/records/edit-field.ts';
import { optionsOf } from '#shared-calc/records/field-text.ts';
import type { Pack } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import { sayFieldFault } from '#shared-calc/words/say-field-fault.ts';

export type PriceRow = BookRow & OpenPrice;

/**
 * The prices that some jobs wait for, or the whole workshop where none is named. A row that is given its price stays
 * while the table is shown, so that its pack, supplier and day can still be written.
 */
export function priceTable(jobs: readonly string[]): BookTable<PriceRow> {
  const shown = new Map<string, OpenPrice>();
  return {
    label: 'Prices missing, one material a row',
    one: 'price',
    view: 'prices',
    firstColumn: 'price',
    rows: (context) => {
      const open = jobs.length === 0 ? allOpenPrices(context) : openPricesOf(context, jobs);
      for (const each of open) if (!shown.has(each.material)) shown.set(each.material, each);
      const now = new Map(open.map((each) => [each.material, each]));
      return [...shown.values()].map((use) => ({
        id: use.material,
        ...(now.get(use.material) ?? openPrice(context, use)),
      }));
    },
    columns: (context) => [
      materialColumn,
      neededColumn(context),
      packColumn(context),
      supplierColumn(context),
      priceColumn(context),
      fromColumn(context),
      stakeColumn(context),
    ],
    nameOf: ({ id, label }) => `${id} ${label}`,
  };
}

type Column = BookColumn<PriceRow>;

const materialColumn: Column = {
  key: 'material',
  title: 'Material',
  unit: '',
  look: 'words',
  width: 16,
  show: ({ label }) => label,
  entry: ({ label }) => label,
  closed: 'The name of a material is written in its book.',
};

function neededColumn({ display }: BookContext): Column {
  const show = ({ used, unit }: PriceRow) => (used > 0 ? goodsWords(used, unit, display) : '');
  const closed = 'What is needed is worked from the sizes.';
  return { key: 'needed', title: 'Needed', unit: '', look: 'figure', width: 5, show, entry: show, closed };
}

function packColumn(context: BookContext): Column {
  const { records, workshop } = context;
  const entry = ({ pack, unit }: PriceRow) => {
    if (!pack) return '';
    const amount = String(cleanNoise(pack.amount)).replace('.', workshop.decimalComma ? ',' : '.');
    return unit === 'each' ? amount : `${amount} ${unit}`;
  };
  return {
    key: 'pack',
    title: 'Pack',
    unit: '',
    look: 'figure',
    width: 5.5,
    show: ({ pack, unit }) => (pack ? goodsWords(pack.amount, unit, context.display) : ''),
    entry,
    write: ({ material, unit, pack }, text) => {
      const amount = said(readMeasure(text, { name: 'Pack', stored: unit, low: 1e-6 }, workshop));
      if (!amount.ok) return amount;
      const to = amount.value ?? 0;
      if (pack && pricesOf(records, pack.id).length === 0)
        return updateRecord(`pack of ${material}`, 'pack', { from: pack, to: { ...pack, amount: to } });
      return byAct(newPack.run(context, { material, amount: to }));
    },
  };
}

function supplierColumn(context: BookContext): Column {
  const { records } = context;
  const nameOf = ({ supplier }: PriceRow) => records.supplier.get(supplier ?? '')?.name ?? supplier ?? '';
  return {
    key: 'supplier',
    title: 'Supplier',
    unit: '',
    look: 'words',
    width: 7.5,
    show: nameOf,
    entry: nameOf,
    options: optionsOf(recordFields.pack.supplier, records),
    coded: true,
    write: ({ material, pack }, text) => {
      const [tank, goods] = [records.tank.get(material), records.material.get(material)];
      const label = `supplier of ${material}`;
      const key = 'supplier';
      if (usualSupplier(records, material) === undefined) {
        if (goods)
          return edited(label, 'material', editField({ kind: 'material', record: goods, key, text }, context), goods);
        if (tank) return edited(label, 'tank', editField({ kind: 'tank', record: tank, key, text }, context), tank);
      }
      if (!pack) return failed('Give the pack first: a supplier sells a pack.');
      return edited(label, 'pack', editField({ kind: 'pack', record: pack, key, text }, context), pack);
    },
  };
}

function edited<K extends 'material' | 'tank' | 'pack'>(
  label: string,
  kind: K,
  to: ReturnType<typeof editField<K>>,
  from: Parameters<typeof updateRecord<K>>[2]['from'],
): Result<Change, string> {
  return to.ok ? updateRecord(label, kind, { from, to: to.value }) : failed(sayFieldFault(to.fault));
}

const guessFlag: BookFlag = { sign: 'need', look: 'needs', says: 'a guess' };

function priceColumn(context: BookContext): Column {
  const { workshop } = context;
  return {
    key: 'price',
    title: 'Price',
    unit: workshop.currency,
    look: 'figure',
    width: 6,
    show: ({ price }) => showCoins(price?.priceCoins, workshop),
    entry: ({ price }) => entryOfCoins(price?.priceCoins, workshop),
    flag: ({ price }) => {
      if (price?.guess) return guessFlag;
      return price && isOldPrice(price, context) ? oldPriceFlag : undefined;
    },
    write: ({ material, unit, pack, price }, text) => {
      if (text.trim() === '') return failed('A price is not emptied; take it out of the prices at the right.');
      const coins = said(readMoney(withoutMark(text, workshop.currency), workshop, 'Price'));
      if (!coins.ok) return coins;
      const sold = pack ?? pieceOf(material, unit);
      if (!sold) return failed('Give the pack first: how much it holds.');
      const { amount, supplier } = sold;
      const from = price && price.from <= context.today && price.guess ? price.from : context.today;
      return byAct(putPrice.run(context, { material, amount, supplier, priceCoins: coins.value, from }));
    },
  };
}

/** A pasted `$4.60` or `4.60 USD` as its number, where the mark is the workshop's currency. */
function withoutMark(text: string, currency: string): string {
  const money = takeMoneyApart(text);
  return money && money.mark !== '' && isMarkOf(money.mark, currency) ? money.number : text;
}

/** What is bought by the piece has a pack of one. */
function pieceOf(material: string, unit: string): Pack | undefined {
  return unit === 'each' ? { id: packId(material, 1), material, amount: 1 } : undefined;
}

function fromColumn(context: BookContext): Column {
  const day = ({ price }: PriceRow) => (price ? writeDay(price.from, context.display.dateOrder) : '');
  return {
    key: 'from',
    title: 'From',
    unit: '',
    look: 'words',
    width: 6.5,
    days: context,
    show: day,
    entry: day,
    write: ({ material, price }, text) => {
      const from = said(readDay(text, 'From', { ...context, nearest: true }));
      if (!from.ok) return from;
      if (!price) return failed('Give the price first: it holds from today, and its day is set then.');
      return updateRecord(`price of ${material} from ${from.value}`, 'packPrice', {
        from: price,
        to: { ...price, from: from.value },
      });
    },
  };
}

function stakeColumn({ workshop }: BookContext): Column {
  const show = ({ stakeCoins }: PriceRow) => showCoins(stakeCoins, workshop);
  const closed = 'What is needed at this price.';
  const { currency: unit } = workshop;
  return { key: 'stake', title: 'At stake', unit, look: 'figure', width: 5, show, entry: show, closed };
}

function byAct(done: ReturnType<typeof putPrice.run>): Result<Change, string> {
  return done.ok ? done : failed(sayActFault(done.fault));
}
