import { putPrice } from '#shared-calc/acts/price-acts.ts';
import { isOldPrice, packId, packsOf, priceOn, pricesOf } from '#shared-calc/buy/pack-prices.ts';
import { entryOfCoins, showCoins } from '#shared-calc/quantity/coins-text.ts';
import { readMoney } from '#shared-calc/read/read-money.ts';
import { added, type Added } from '#shared-calc/records/change.ts';
import type { Pack, PackPrice, Records } from '#shared-calc/records/records.ts';
import { failed } from '#shared-calc/result.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';
import type { BookContext } from './book-api.ts';
import { oldPriceFlag, type BookColumn, type BookRow } from './book-table.ts';

/** A row of what is bought by the piece, a tank or a plant, with its current price. */
export interface PieceRow extends BookRow {
  /** The pack of one; not in the book until somebody has set a price. */
  readonly pack: Pack;
  readonly price: PackPrice | undefined;
}

export function pieceOf(of: string, { records, today }: BookContext): Omit<PieceRow, 'id'> {
  const pack = packsOf(records, of)[0] ?? { id: packId(of, 1), material: of, amount: 1 };
  return { pack, price: priceOn(records, pack.id, today) };
}

/** The packs of something and their prices, which go with it. */
export function packRecords(records: Records, of: string): readonly Added[] {
  const packs = packsOf(records, of);
  const prices = packs.flatMap((pack) => pricesOf(records, pack.id));
  return [...prices.map((price) => added('packPrice', price)), ...packs.map((pack) => added('pack', pack))];
}

/** The current price of one, and the day it is from; a new price is valid from today. */
export function priceColumns<Row extends PieceRow>(context: BookContext): readonly BookColumn<Row>[] {
  const { workshop, today } = context;
  return [
    {
      key: 'price',
      title: 'Price',
      unit: workshop.currency,
      look: 'figure',
      width: 8,
      rank: ({ price }) => price?.priceCoins,
      bound: (text) => said(readMoney(text, workshop, 'Price')),
      show: ({ price }) => showCoins(price?.priceCoins, workshop),
      entry: ({ price }) => entryOfCoins(price?.priceCoins, workshop),
      flag: ({ price }) => (price && isOldPrice(price, context) ? oldPriceFlag : undefined),
      write: ({ pack: { material, amount, supplier } }, text) => {
        if (text.trim() === '') return failed('A price is not emptied; take it out of the prices at the right.');
        const coins = said(readMoney(text, workshop, 'Price'));
        if (!coins.ok) return coins;
        const done = putPrice.run(context, { material, amount, supplier, priceCoins: coins.value, from: today });
        return done.ok ? done : failed(sayActFault(done.fault));
      },
    },
    {
      key: 'from',
      title: 'Price from',
      unit: '',
      look: 'words',
      width: 6.5,
      show: ({ price }) => price?.from ?? '',
      entry: ({ price }) => price?.from ?? '',
      closed: 'A new price holds from today; set one from another day in the prices at the right.',
    },
  ];
}
