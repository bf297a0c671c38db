import { placeRows, type PlacedList } from '#shared-calc/acts/place-list-rows.ts';
import { readPriceList } from '#shared-calc/acts/price-list.ts';
import type { RowChoice } from '#shared-calc/acts/row-choice.ts';
import type { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import type { Records, Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { sayListFault, sayListRowFault } from '#shared-calc/words/say-list-fault.ts';
import { demoRecords } from '#tests/demo-bench.ts';

const records = demoRecords();
export const SUPPLIER = 'S-hollin';

export function inBook(over: Partial<Workshop>, of: Records = records): Records {
  return { ...of, workshop: new Map([['workshop', { ...workshopOf(of), ...over }]]) };
}

interface Read {
  readonly map?: PriceListMap | undefined;
  readonly remembered?: PriceListMap;
  readonly of?: Records;
  readonly supplier?: string;
  readonly choices?: ReadonlyMap<number, RowChoice>;
}

export function place(text: string, { of = records, supplier = SUPPLIER, choices, ...said }: Read = {}): PlacedList {
  const read = readPriceList(text, { ...said, workshop: workshopOf(of) });
  if (!read.ok) throw new Error(sayListFault(read.fault));
  return placeRows(read.value, { ...said, records: of, supplier, ...(choices && { choices }) });
}

export function taken(placed: PlacedList): unknown {
  return placed.taken.map(({ row, material, amount, priceCoins, from }) => [row, material, amount, priceCoins, from]);
}

export function left(placed: PlacedList): readonly (readonly [number, string])[] {
  return placed.left.map(({ row, fault }) => [row, sayListRowFault(fault)]);
}
