import { packsOf, priceOn, sellerOf } from '#shared-calc/buy/pack-prices.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { isRounded, packIn, type WrittenPack } from '#shared-calc/read/list-pack.ts';
import type { Pack, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import type { ListCellFault, ListRow, PriceList } from './price-list.ts';
import { rowAsTyped, type RowChoice } from './row-choice.ts';

/** Why a row is left. */
export type ListRowFault =
  | ListCellFault
  | { readonly kind: 'no-article' }
  | { readonly kind: 'unknown-article'; readonly article: string }
  | { readonly kind: 'unknown-material'; readonly code: string; readonly known: readonly string[] }
  | { readonly kind: 'of-another-supplier'; readonly supplier: string }
  | { readonly kind: 'pack-without-unit'; readonly amount: number; readonly own: string }
  | { readonly kind: 'pack-other-kind'; readonly unit: string; readonly own: string }
  /** A tank or a plant has one pack of 1. */
  | { readonly kind: 'not-by-the-piece'; readonly amount: number }
  | { readonly kind: 'no-label' }
  /** An earlier row says the same. */
  | { readonly kind: 'said-before'; readonly row: number }
  /** Other rows have another price for the same pack and day. */
  | { readonly kind: 'two-prices'; readonly rows: readonly number[] }
  | { readonly kind: 'left-out' };

/** A row with its goods and its pack. */
export interface PlacedRow {
  readonly row: number;
  readonly article: string;
  readonly label: string;
  /** Left out for a new material. */
  readonly material?: string;
  /** As the list has it. */
  readonly pack: { readonly amount: number; readonly unit: string };
  /** In the unit of the material. */
  readonly amount: number;
  readonly unit: string;
  /** Left out for a pack that is not in the book yet. */
  readonly known?: Pack;
  readonly priceCoins: number;
  readonly from: Day;
  /** The price of the pack on that day as the book has it. */
  readonly beforeCoins?: number;
  /** The book has this price of this day already. */
  readonly isThere: boolean;
}

export interface LeftRow {
  readonly row: number;
  readonly fault: ListRowFault;
}

export interface Placing {
  readonly records: Records;
  /** Whose list it is. */
  readonly supplier: string;
  readonly map?: PriceListMap | undefined;
  readonly remembered?: PriceListMap | undefined;
  /** By row; any other row is taken if its goods are known. */
  readonly choices?: ReadonlyMap<number, RowChoice>;
}

export interface PlacedList {
  readonly taken: readonly PlacedRow[];
  readonly left: readonly LeftRow[];
}

/** Finds goods and pack of every row. A row that is left stops no other. */
export function placeRows({ rows }: Pick<PriceList, 'rows'>, placing: Placing): PlacedList {
  const goodsOf = goodsByArticle(placing);
  const placed: PlacedRow[] = [];
  const left: LeftRow[] = [];
  for (const row of rows) {
    const one = placeRow(row, goodsOf, placing);
    if (one.ok) placed.push(one.value);
    else left.push({ row: row.row, fault: one.fault });
  }
  const { taken, doubled } = withoutDoubles(placed);
  return { taken, left: [...left, ...doubled].toSorted((one, other) => one.row - other.row) };
}

const AS_LISTED: RowChoice = {};
const LEFT_OUT: ListRowFault = { kind: 'left-out' };

type GoodsOf = (row: ListRow) => Result<string, ListRowFault>;

function placeRow(row: ListRow, goodsOf: GoodsOf, placing: Placing): Result<PlacedRow, ListRowFault> {
  const choice = placing.choices?.get(row.row) ?? AS_LISTED;
  const fault = choice.act === 'leave' ? LEFT_OUT : (row.fault ?? strangerFault(row, placing));
  if (fault) return failed(fault);
  const said = choice === AS_LISTED ? row : rowAsTyped(row, choice, workshopOf(placing.records));
  if (choice.act === 'new material') return placeNew(said);
  const material = choice.material === undefined ? goodsOf(said) : ok(choice.material);
  return material.ok ? placeKnown(said, material.value, placing) : material;
}

function strangerFault({ supplier: named }: ListRow, { supplier }: Placing): ListRowFault | undefined {
  return named === undefined || named === supplier ? undefined : { kind: 'of-another-supplier', supplier: named };
}

function placeKnown(row: ListRow, material: string, placing: Placing): Result<PlacedRow, ListRowFault> {
  const { records } = placing;
  const unit = unitOfGoods(material, records);
  if (unit === undefined) return failed({ kind: 'unknown-material', code: material, known: codesOf(records) });
  const pack = packOfRow(row, { material, unit }, placing);
  if (!pack.ok) return pack;
  const price = priceOfRow(row);
  if (!price.ok) return price;
  const { article, label } = row;
  const before = standingPrice(pack.value.known, price.value, records);
  return ok({ row: row.row, article, label, material, unit, ...pack.value, ...price.value, ...before });
}

/** The price that the book has of a pack on the day of a row's. */
function standingPrice(
  known: Pack | undefined,
  { priceCoins, from }: Pick<PlacedRow, 'priceCoins' | 'from'>,
  records: Records,
): Pick<PlacedRow, 'beforeCoins' | 'isThere'> {
  const before = known && priceOn(records, known.id, from);
  if (!before) return { isThere: false };
  return { beforeCoins: before.priceCoins, isThere: before.from === from && before.priceCoins === priceCoins };
}

function placeNew(row: ListRow): Result<PlacedRow, ListRowFault> {
  const label = row.label.trim();
  if (label === '') return failed({ kind: 'no-label' });
  if (!row.pack.ok) return row.pack;
  const price = priceOfRow(row);
  if (!price.ok) return price;
  const { amount, unit = 'each' } = row.pack.value;
  const { article } = row;
  return ok({ row: row.row, article, label, pack: { amount, unit }, amount, unit, ...price.value, isThere: false });
}

function priceOfRow(row: ListRow): Result<Pick<PlacedRow, 'priceCoins' | 'from'>, ListRowFault> {
  if (!row.priceCoins.ok) return row.priceCoins;
  return row.from.ok ? ok({ priceCoins: row.priceCoins.value, from: row.from.value }) : row.from;
}

/** Goods by the map, by our own code in the row, by what was remembered, by the article number of a pack. */
function goodsByArticle({ records, supplier, map, remembered }: Placing): GoodsOf {
  const said = new Map(Object.entries(map?.articles ?? {}));
  const before = new Map(Object.entries(remembered?.articles ?? {}));
  const ofPacks = new Map(
    [...records.pack.values()].flatMap((pack): (readonly [string, string])[] =>
      pack.article !== undefined && sellerOf(records, pack) === supplier ? [[pack.article, pack.material]] : [],
    ),
  );
  return ({ article, material }) => {
    const known = said.get(article) ?? (material === '' ? (before.get(article) ?? ofPacks.get(article)) : material);
    if (known !== undefined) return ok(known);
    return failed(article === '' ? { kind: 'no-article' } : { kind: 'unknown-article', article });
  };
}

interface FoundPack {
  readonly pack: PlacedRow['pack'];
  readonly amount: number;
  readonly known?: Pack;
}

interface OfGoods {
  readonly material: string;
  readonly unit: string;
}

/**
 * The pack that a row is a price of. Where the row names none it is the one that the supplier sells of it; where its
 * pack cannot be read (`1 bag`) it is the one that bears its article number.
 */
function packOfRow(row: ListRow, goods: OfGoods, { records, supplier }: Placing): Result<FoundPack, ListRowFault> {
  const packs = packsOf(records, goods.material).filter((pack) => (sellerOf(records, pack) ?? supplier) === supplier);
  if (!row.pack.ok) {
    const only = row.pack.fault.kind === 'pack-empty' ? onlyPack(packs, row.article) : packNumbered(packs, row.article);
    const { unit } = goods;
    return only ? ok({ pack: { amount: only.amount, unit }, amount: only.amount, known: only }) : row.pack;
  }
  const amount = amountOf(row.pack.value, goods, records);
  if (!amount.ok) return amount;
  const known = packLike(packs, { written: row.pack.value, amount: amount.value, unit: goods.unit });
  const { amount: written, unit = goods.unit } = row.pack.value;
  return ok({
    pack: { amount: written, unit },
    amount: known?.amount ?? amount.value,
    ...(known && { known }),
  });
}

/** The one pack of an article, or of a supplier who sells one alone. */
function onlyPack(packs: readonly Pack[], article: string): Pack | undefined {
  const [only, ...others] = packs;
  return packNumbered(packs, article) ?? (others.length === 0 ? only : undefined);
}

function packNumbered(packs: readonly Pack[], article: string): Pack | undefined {
  const [only, ...others] = packs.filter((pack) => article !== '' && pack.article === article);
  return others.length === 0 ? only : undefined;
}

/** In the unit of the goods. */
function amountOf(pack: WrittenPack, { material, unit }: OfGoods, records: Records): Result<number, ListRowFault> {
  if (pack.unit === undefined && unit !== 'each')
    return failed({ kind: 'pack-without-unit', amount: pack.amount, own: unit });
  const amount = packIn(pack, unit);
  if (amount === undefined) return failed({ kind: 'pack-other-kind', unit: pack.unit ?? unit, own: unit });
  const isPiece = records.tank.has(material) || records.plant.has(material);
  return isPiece && amount !== 1 ? failed({ kind: 'not-by-the-piece', amount }) : ok(amount);
}

interface SoughtPack {
  readonly written: WrittenPack;
  /** In the unit of the goods. */
  readonly amount: number;
  readonly unit: string;
}

/** The pack of this amount, or the one that the list's amount is a rounding of. */
function packLike(packs: readonly Pack[], { written, amount, unit }: SoughtPack): Pack | undefined {
  return (
    packs.find((pack) => isAlike(pack.amount, amount)) ?? packs.find((pack) => isRounded(written, pack.amount, unit))
  );
}

function isAlike(one: number, other: number): boolean {
  return Math.abs(one - other) <= 1e-9 * Math.max(1, one);
}

function codesOf({ material, tank, plant }: Records): readonly string[] {
  return [...material.keys(), ...tank.keys(), ...plant.keys()];
}

/** Rows that repeat an earlier one, or that have two prices for one pack and day, are left. */
function withoutDoubles(rows: readonly PlacedRow[]): {
  readonly taken: readonly PlacedRow[];
  readonly doubled: readonly LeftRow[];
} {
  const doubled: LeftRow[] = [];
  const out = new Set<number>();
  for (const alike of Map.groupBy(rows, keyOf).values()) {
    const [first, ...others] = alike;
    if (!first || others.length === 0) continue;
    const isOnePrice = others.every(({ priceCoins }) => priceCoins === first.priceCoins);
    for (const each of isOnePrice ? others : alike) {
      const rest = alike.filter(({ row }) => row !== each.row).map(({ row }) => row);
      doubled.push({
        row: each.row,
        fault: isOnePrice ? { kind: 'said-before', row: first.row } : { kind: 'two-prices', rows: rest },
      });
      out.add(each.row);
    }
  }
  return { taken: rows.filter(({ row }) => !out.has(row)), doubled };
}

function keyOf({ material, label, amount, unit, from }: PlacedRow): string {
  return JSON.stringify([material ?? ['new', label, unit], Number(amount.toPrecision(9)), from]);
}
