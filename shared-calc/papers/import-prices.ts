import { priceOn } from '#shared-calc/buy/pack-prices.ts';
import { parseDay } from '#shared-calc/calendar/day.ts';
import { sameDimension } from '#shared-calc/quantity/dimension.ts';
import { findUnit, fromBase, toBase, unitOf } from '#shared-calc/quantity/unit.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import { emptyChange, type Change } from '#shared-calc/records/change.ts';
import type { Pack, PackPrice, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { readCsv, type CsvRow, type RefusedRow } from './csv-rows.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { readPriceCoins } from './read-price-coins.ts';

export interface TakenPrice {
  readonly row: number;
  readonly material: string;
  readonly pack: number;
  readonly unit: string;
  readonly from: string;
  readonly priceCoins: number;
  /** What the pack cost on that day before; left out where it had no price. */
  readonly beforeCoins?: number;
}

export interface PriceImport {
  readonly taken: readonly TakenPrice[];
  readonly refused: readonly RefusedRow[];
  /** Empty while any row is refused: nothing is half taken in. */
  readonly change: Change;
}

/**
 * Reads a price list: rows of material, pack, unit, price, from. A tank's code is a material with a pack of
 * 1 each. A price of the same pack and day is put right; every other is a new one with its from-date.
 */
export function importPrices(text: string, records: Records): PriceImport {
  const { rows, refused } = readCsv(text, ['material', 'pack', 'unit', 'price', 'from']);
  const faults = [...refused];
  const prices = new Map<string, PackPrice>();
  const taken: TakenPrice[] = [];
  for (const row of rows) {
    const read = readRow(row, records);
    const twice = read.ok && prices.has(read.value.price.id);
    if (!read.ok) faults.push({ row: row.row, says: read.fault });
    else if (twice)
      faults.push({ row: row.row, says: `A second price for ${read.value.told.material} from the same day.` });
    else {
      prices.set(read.value.price.id, read.value.price);
      taken.push(read.value.told);
    }
  }
  if (rows.length === 0 && faults.length === 0) faults.push({ row: 1, says: 'The file holds no prices.' });
  const change = faults.length > 0 ? emptyChange('price list') : changeOf([...prices.values()], records);
  return { taken, refused: faults.toSorted((a, b) => a.row - b.row), change };
}

interface ReadRow {
  readonly price: PackPrice;
  readonly told: TakenPrice;
}

function readRow({ row, fields }: CsvRow, records: Records): Result<ReadRow, string> {
  const { material = '', pack: size = '', unit = '', price: written = '', from = '' } = fields;
  const pack = findPack({ material, size, unit }, records);
  if (!pack.ok) return pack;
  const coins = readPriceCoins(written, workshopOf(records));
  if (!coins.ok) return failed(`${material}: ${coins.fault}`);
  if (!parseDay(from).ok) return failed(`${material}: "${from}" is not a day; write it as 2026-11-25.`);
  return ok(readPrice({ row, material, from, pack: pack.value, priceCoins: coins.value }, records));
}

interface Priced {
  readonly row: number;
  readonly material: string;
  readonly from: string;
  readonly pack: Pack;
  readonly priceCoins: number;
}

function readPrice({ row, material, from, pack, priceCoins }: Priced, records: Records): ReadRow {
  const sameDay = [...records.packPrice.values()].find((each) => each.pack === pack.id && each.from === from);
  const beforeCoins = priceOn(records, pack.id, from)?.priceCoins;
  const unit = unitOfGoods(material, records) ?? 'each';
  return {
    price: { id: sameDay?.id ?? `${pack.id}@${from}`, pack: pack.id, from, priceCoins },
    told: {
      row,
      material,
      pack: pack.amount,
      unit,
      from,
      priceCoins,
      ...(beforeCoins !== undefined && { beforeCoins }),
    },
  };
}

interface Asked {
  readonly material: string;
  readonly size: string;
  readonly unit: string;
}

function findPack({ material, size, unit }: Asked, records: Records): Result<Pack, string> {
  const own = unitOfGoods(material, records);
  if (own === undefined) {
    const near = didYouMean(material, [...records.material.keys(), ...records.tank.keys()]);
    return failed(`Nothing called ${material} in the material book or the tank book.${near}`);
  }
  const given = findUnit(unit);
  if (!given || !sameDimension(given.dimension, unitOf(own).dimension)) {
    return failed(`${material} is sold in ${own}; "${unit}" does not fit.`);
  }
  const amount = Number(size);
  if (!(amount > 0 && Number.isFinite(amount))) return failed(`${material}: "${size}" is not a pack size.`);
  const inOwn = cleanNoise(fromBase(toBase(amount, given), unitOf(own)));
  const packs = [...records.pack.values()].filter((each) => each.material === material);
  const found = packs.find((each) => Math.abs(each.amount - inOwn) <= 1e-9 * Math.max(1, inOwn));
  if (found) return ok(found);
  const sizes = packs.map((each) => `${each.amount} ${own}`).join(', ') || 'none';
  return failed(`${material} has no pack of ${inOwn} ${own}. Its packs: ${sizes}.`);
}

function changeOf(prices: readonly PackPrice[], records: Records): Change {
  const before = (price: PackPrice) => records.packPrice.get(price.id);
  return {
    label: `${prices.length} prices of a price list`,
    added: prices.filter((price) => !before(price)).map((record) => ({ kind: 'packPrice' as const, record })),
    updated: prices.flatMap((to) => {
      const from = before(to);
      return from && from.priceCoins !== to.priceCoins ? [{ kind: 'packPrice' as const, from, to }] : [];
    }),
    removed: [],
  };
}
