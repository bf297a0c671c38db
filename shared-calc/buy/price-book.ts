import { daysBetween } from '#shared-calc/calendar/day.ts';
import type { Material, Pack, PackPrice, Records, Supplier } from '#shared-calc/records/records.ts';
import type { BuyFault } from './buy-fault.ts';

export interface PackOnSale {
  readonly id: string;
  /** In the material's unit. */
  readonly amount: number;
  readonly priceCoins: number;
  /** The first day of its price. */
  readonly from: string;
  /** The price is older than the workshop allows. */
  readonly old: boolean;
  /** Nobody has asked the supplier for it; left out if somebody has. */
  readonly guess?: true;
}

/** A material, or a tank or a plant as one, as one supplier sells it on the day of the book. */
export interface Goods {
  readonly material: string;
  readonly label: string;
  readonly unit: string;
  readonly supplier?: string;
  readonly sale: Material['sale'];
  readonly keeps: boolean;
  /** Smallest first; a pack that is empty, has no price, or has its first one in the future, is not on sale. */
  readonly packs: readonly PackOnSale[];
  /** Why nothing of it is on sale. */
  readonly fault?: BuyFault;
}

/** The prices of one day. */
export interface PriceBook {
  readonly on: string;
  /** Each as its usual supplier sells it. */
  readonly goods: ReadonlyMap<string, Goods>;
  /** Of what several suppliers sell: each one's goods, the usual supplier's first; an issued quote has none. */
  readonly offers?: ReadonlyMap<string, readonly Goods[]>;
  readonly suppliers: ReadonlyMap<string, Supplier>;
}

export interface PriceDay {
  /** `YYYY-MM-DD` */
  readonly on: string;
  readonly oldPriceDays: number;
}

type PriceRecords = Pick<Records, 'material' | 'pack' | 'packPrice' | 'supplier' | 'tank' | 'plant'>;
type Offered = Omit<Goods, 'packs' | 'fault'>;

/**
 * The prices in force on a day: for each pack the latest from that day or before. A tank is bought by the piece, and
 * keeps; a plant by the piece, and does not. Where the usual supplier has no pack of something on sale, the first other
 * one's packs are its goods.
 */
export function priceBook(records: PriceRecords, day: PriceDay): PriceBook {
  const packs = Map.groupBy(records.pack.values(), (pack) => pack.material);
  const prices = Map.groupBy(records.packPrice.values(), (price) => price.pack);
  const isOld = oldFrom(day);
  const goods = new Map<string, Goods>();
  const offers = new Map<string, readonly Goods[]>();
  for (const each of offered(records)) {
    const all = bySupplier(each, packs.get(each.material) ?? []).map(([offer, some]) =>
      goodsOn(offer, some, { prices, on: day.on, isOld }),
    );
    const first = all.find(({ fault }) => !fault) ?? all[0];
    if (first) goods.set(each.material, first);
    if (all.length > 1) offers.set(each.material, all);
  }
  return { on: day.on, goods, offers, suppliers: records.supplier };
}

/** What one supplier sells of it, the usual supplier first, then in the order of their packs. */
function bySupplier(usual: Offered, packs: readonly Pack[]): readonly (readonly [Offered, readonly Pack[]])[] {
  if (packs.every(({ supplier = usual.supplier }) => supplier === usual.supplier)) return [[usual, packs]];
  const sold = Map.groupBy(packs, ({ supplier = usual.supplier }) => supplier);
  const { supplier: _, ...goods } = usual;
  return [...sold]
    .toSorted(([one], [other]) => Number(other === usual.supplier) - Number(one === usual.supplier))
    .map(([supplier, own]) => [{ ...goods, ...(supplier !== undefined && { supplier }) }, own]);
}

/** Whether a price with this first day is old by now. Cached, as most prices share few days. */
function oldFrom({ on, oldPriceDays }: PriceDay): (from: string) => boolean {
  const known = new Map<string, boolean>();
  return (from) => {
    const old = known.get(from) ?? daysBetween(from, on) > oldPriceDays;
    known.set(from, old);
    return old;
  };
}

/** Whether any pack of a material has an old price on the day of the book; cached for each book. */
export function oldPricesIn(book: PriceBook): (material: string) => boolean {
  const known = oldPrices.get(book) ?? ((material) => book.goods.get(material)?.packs.some(({ old }) => old) ?? false);
  oldPrices.set(book, known);
  return known;
}

const oldPrices = new WeakMap<PriceBook, (material: string) => boolean>();

/** Goods by material id or tank code; what is no longer in the books is not on sale. */
export function goodsIn(book: PriceBook, { material, unit = 'each' }: Pick<Goods, 'material'> & Partial<Goods>): Goods {
  const fault: BuyFault = { kind: 'unknown-material', material };
  return book.goods.get(material) ?? { material, label: material, unit, sale: 'packs', keeps: true, packs: [], fault };
}

/** What suppliers sell of a material at a price that is known, the usual supplier's first; empty where one alone does. */
export function offersIn({ offers }: PriceBook, material: string): readonly Goods[] {
  return (offers?.get(material) ?? []).filter(({ fault, supplier }) => !fault && supplier !== undefined);
}

/** Goods as a supplier sells them. */
export function soldBy(
  { goods, offers }: PriceBook,
  { material, supplier }: Pick<Goods, 'material' | 'supplier'>,
): Goods | undefined {
  return offers?.get(material)?.find((each) => each.supplier === supplier) ?? goods.get(material);
}

/** Coins for one unit of the material by its smallest pack on sale, with fractions of a coin. */
export function unitPriceCoins(goods: Goods): number {
  const smallest = goods.packs[0];
  return smallest ? smallest.priceCoins / smallest.amount : 0;
}

function* offered(records: PriceRecords): Generator<Offered> {
  for (const { id, label, unit, supplier, sale, keeps } of records.material.values()) {
    yield { material: id, label, unit, sale, keeps, ...(supplier !== undefined && { supplier }) };
  }
  for (const { id, label, supplier } of records.tank.values()) {
    yield {
      material: id,
      label,
      unit: 'each',
      sale: 'packs',
      keeps: true,
      ...(supplier !== undefined && { supplier }),
    };
  }
  for (const { id, name } of records.plant.values()) {
    yield { material: id, label: name, unit: 'each', sale: 'packs', keeps: false };
  }
}

interface PricesOn {
  readonly prices: ReadonlyMap<string, readonly PackPrice[]>;
  readonly on: string;
  readonly isOld: (from: string) => boolean;
}

function goodsOn(offer: Offered, packs: readonly Pack[], { prices, on, isOld }: PricesOn): Goods {
  const sorted = packs.toSorted((a, b) => a.amount - b.amount || (a.id < b.id ? -1 : 1));
  const onSale = sorted
    .filter(isFull)
    .flatMap((pack) => onSaleOn(pack, prices.get(pack.id) ?? [], { on, isOld }) ?? []);
  return onSale.length > 0 ? { ...offer, packs: onSale } : { ...offer, packs: [], fault: faultOf(offer, sorted, on) };
}

function faultOf({ material, label, unit }: Offered, packs: readonly Pack[], on: string): BuyFault {
  const [empty] = packs;
  if (!empty) return { kind: 'no-packs', material, label };
  const full = packs.find(isFull);
  if (!full) return { kind: 'no-amount', material, label, unit, amount: empty.amount };
  return { kind: 'no-price', material, label, unit, amount: full.amount, on };
}

function isFull({ amount }: Pick<Pack, 'amount'>): boolean {
  return amount > 0;
}

function onSaleOn(
  pack: Pack,
  prices: readonly PackPrice[],
  { on, isOld }: Omit<PricesOn, 'prices'>,
): PackOnSale | undefined {
  let inForce: PackPrice | undefined;
  for (const price of prices) {
    if (price.from <= on && (!inForce || price.from >= inForce.from)) inForce = price;
  }
  if (!inForce) return undefined;
  const { from, priceCoins, guess } = inForce;
  return { id: pack.id, amount: pack.amount, priceCoins, from, old: isOld(from), ...(guess && { guess }) };
}
