import { coinsText } from '#shared-calc/quantity/coins-text.ts';
import { goodsWords } from '#shared-calc/quantity/goods-words.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import type { OutOfSeason, Placement } from '#shared-calc/derive/placement.ts';
import { sayPlainDate, saySeasonDays } from '#shared-calc/prepare/say-day.ts';
import type { NoSupplier } from '#shared-calc/buy/no-supplier.ts';

/** What placing orders leaves out: goods without a supplier or out of season, suppliers that were not asked for. */
export type LeftOut = Pick<Placement, 'drafts' | 'noSupplier' | 'noPrice' | 'outOfSeason' | 'unpaid'> & {
  /** Suppliers asked for that nothing is bought from. */
  readonly nothingFrom: readonly string[];
};

export function leftOutOf(placement: Placement, suppliers: readonly string[] | undefined): LeftOut {
  const { drafts, noSupplier, noPrice, outOfSeason, unpaid } = placement;
  const ids = drafts.map(({ supplier }) => supplier.id);
  return {
    drafts: drafts.filter(({ supplier }) => suppliers && !suppliers.includes(supplier.id)),
    noSupplier,
    noPrice,
    outOfSeason,
    unpaid,
    nothingFrom: (suppliers ?? []).filter((id) => !ids.includes(id)),
  };
}

/** Each thing by name, a sentence each. */
export function sayLeftOut(left: LeftOut, derived: Derived): readonly string[] {
  const { coinDecimals, currency } = derived.workshop;
  const money = (coins: number) => `${coinsText(coins, coinDecimals)} ${currency}`;
  const nameOf = (id: string) => derived.records.supplier.get(id)?.name ?? id;
  return [
    ...left.unpaid.map((job) => `${job} has no deposit yet: order nothing that is cut or grown for it.`),
    ...left.noSupplier.map((each) => sayNoSupplier(each, derived)),
    ...left.noPrice.map((each) => sayNoPrice(each, derived)),
    ...left.outOfSeason.map((each) => saySeason(each, derived)),
    ...left.drafts.map(
      ({ supplier, goodsCoins }) => `Not ordered from ${supplier.name}: ${money(goodsCoins)} of goods.`,
    ),
    ...left.nothingFrom.map((id) => `Nothing is to be bought from ${nameOf(id)}.`),
  ];
}

/** `No supplier yet: Cube 450 (T07) 2, 428.00 cr.` */
export function sayNoSupplier(
  { material, label, unit, buy, coins }: NoSupplier,
  { workshop, display }: Pick<Derived, 'workshop' | 'display'>,
): string {
  const { coinDecimals, currency } = workshop;
  const amount = goodsWords(buy, unit, display);
  return `No supplier yet: ${label} (${material}), ${amount}, ${coinsText(coins, coinDecimals)} ${currency}. It is not ordered.`;
}

/** `No price yet: Cube 450 (T07), 2. It is not ordered.` */
function sayNoPrice({ material, label, unit, toBuy }: Placement['noPrice'][number], { display }: Derived): string {
  return `No price yet: ${label} (${material}), ${goodsWords(toBuy, unit, display)}. It is not ordered.`;
}

/** `Oak leaves: to be had only from 1 October to 31 March, 145 g short until 1 October 2027.` */
export function saySeason({ label, unit, short, season, until }: OutOfSeason, { display }: Derived): string {
  const amount = goodsWords(short, unit, display);
  return `${label}: ${saySeasonDays(season, display)}: ${amount} short until ${sayPlainDate(until, display)}. It is not ordered.`;
}
