import { packsOf, pricesOf, sellerOf } from '#shared-calc/buy/pack-prices.ts';
import { contentOf, type PackContent } from '#shared-calc/buy/pack-said.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { ownHeadings } from '#shared-calc/acts/price-list-columns.ts';
import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Pack, PackPrice, Records, Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { coinAmount } from './coin-amount.ts';
import { csvText, type CsvCell } from './csv-text.ts';

/** A price of the book as a price list has it. */
export interface ListedPrice {
  /** Empty if the supplier's number is not known. */
  readonly article: string;
  readonly material: string;
  readonly label: string;
  /** In `unit`, that of the material. */
  readonly pack: number;
  readonly unit: string;
  /** As its supplier says it: 12 gal. */
  readonly content: PackContent;
  readonly priceCoins: number;
  readonly from: Day;
  /** Empty if nobody is known to sell it. */
  readonly supplier: string;
}

/** The prices that hold on a day and those announced after it, of one supplier or of all, in order of the goods. */
export function listedPrices(records: Records, today: Day, supplier?: string): readonly ListedPrice[] {
  const { material, tank, plant } = records;
  const goods = [
    ...[...material.values()].map(({ id, label }) => ({ id, label })),
    ...[...tank.values()].map(({ id, label }) => ({ id, label })),
    ...[...plant.values()].map(({ id, name }) => ({ id, label: name })),
  ];
  return goods.flatMap(({ id, label }) =>
    packsOf(records, id)
      .map((pack) => ({ pack, seller: sellerOf(records, pack) ?? '' }))
      .filter(({ seller }) => supplier === undefined || seller === supplier)
      .flatMap(({ pack, seller }) =>
        standingPrices(records, pack, today).map(({ priceCoins, from }) => ({
          content: contentOf(pack, unitOfGoods(id, records) ?? 'each'),
          article: pack.article ?? '',
          material: id,
          label,
          pack: cleanNoise(pack.amount),
          unit: unitOfGoods(id, records) ?? 'each',
          priceCoins,
          from,
          supplier: seller,
        })),
      ),
  );
}

/** The price of today and later ones, the earliest first. */
function standingPrices(records: Records, pack: Pack, today: Day): readonly PackPrice[] {
  const all = pricesOf(records, pack.id);
  const now = all.find(({ from }) => from <= today);
  return all.filter((price) => price.from > today || price === now).toReversed();
}

/** The list as the program reads it back. */
export function priceListCsv(prices: readonly ListedPrice[], records: Records): string {
  const workshop = workshopOf(records);
  return csvText([ownHeadings, ...prices.map((price) => cellsOf(price, workshop))], workshop);
}

function cellsOf(price: ListedPrice, { coinDecimals }: Workshop): readonly CsvCell[] {
  const { article, material, label, content, priceCoins, from, supplier } = price;
  return [article, material, label, content.amount, content.unit, coinAmount(priceCoins, coinDecimals), from, supplier];
}

/** The list as `--json` has it. */
export function priceListJson(prices: readonly ListedPrice[], { coinDecimals }: Workshop): readonly object[] {
  return prices.map(({ article, material, label, pack, unit, priceCoins, from, supplier }) => ({
    article: article === '' ? null : article,
    material,
    label,
    from,
    pack: { amount: pack, unit },
    price: coinsText(priceCoins, coinDecimals),
    supplier: supplier === '' ? null : supplier,
  }));
}
