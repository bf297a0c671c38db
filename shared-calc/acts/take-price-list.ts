import { z } from 'zod';
import { findPack, packId, pricesOf, sellerOf } from '#shared-calc/buy/pack-prices.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { dayFault } from '#shared-calc/calendar/day.ts';
import { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { recordFields } from '#shared-calc/fields/record-fields.ts';
import { nextCode } from '#shared-calc/records/next-code.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { added, updated, type Change } from '#shared-calc/records/change.ts';
import { freshRecord } from '#shared-calc/records/edit-field.ts';
import {
  recordKinds,
  type Material,
  type Pack,
  type PackPrice,
  type RecordOf,
  type Records,
} from '#shared-calc/records/records.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { Coins, Day } from './inputs.ts';
import type { PlacedRow } from './place-list-rows.ts';

const priceFields = {
  priceCoins: Coins,
  from: Day.describe('The day it holds from.'),
  article: recordKinds.pack.shape.article.describe("The supplier's article number."),
};
const Amount = z.number().positive().describe("What the pack holds, in the material's own unit.");
const Typed = z.string().min(1).max(200).optional().describe('The pack as the list has it: 12 gal.');

const Row = z.discriminatedUnion('act', [
  z.strictObject({ act: z.literal('price'), pack: z.string(), ...priceFields }),
  z.strictObject({ act: z.literal('new pack'), material: z.string(), amount: Amount, typed: Typed, ...priceFields }),
  z.strictObject({
    act: z.literal('new material'),
    label: recordKinds.material.shape.label.min(1),
    unit: z.string(),
    amount: Amount,
    ...priceFields,
  }),
]);

const TakePriceList = z.strictObject({
  supplier: z.string(),
  rows: z.array(Row),
  map: PriceListMap.optional().describe('How the list was read: it is remembered for the next one.'),
});

type TakenRow = z.infer<typeof Row>;

/** Rows of the same label are packs of one new material. */
export const takePriceList = act<z.infer<typeof TakePriceList>>({
  name: 'takePriceList',
  says: "Takes rows of a supplier's price list: prices, new packs and new materials, and remembers how it is read.",
  input: TakePriceList,
  run: ({ records }, { supplier: id, rows, map }) => {
    const supplier = findRecord(records, 'supplier', id);
    if (!supplier.ok) return supplier;
    const written: Written = { materials: new Map(), packs: new Map(), newPacks: new Map(), prices: new Map() };
    for (const row of rows) {
      const fault = takeRow(row, written, { records, supplier: id });
      if (fault) return failed(fault);
    }
    const { value: from } = supplier;
    const priceList = joinMaps(from.priceList, map);
    const to = priceList === undefined ? from : { ...from, priceList };
    const change = changeOf(written, records);
    const many = rows.length === 1 ? '1 price' : `${rows.length} prices`;
    return ok({
      ...change,
      label: `${many} of ${from.name || id}`,
      updated: [...(sameData(from, to) ? [] : [updated('supplier', from, to)]), ...change.updated],
    });
  },
});

/** A map with every part of another that says something written over. */
function joinMaps(old: PriceListMap | undefined, over: PriceListMap | undefined): PriceListMap | undefined {
  if (!over) return old;
  const columns = { ...old?.columns, ...over.columns };
  const articles = { ...old?.articles, ...over.articles };
  return {
    ...old,
    ...over,
    ...(Object.keys(columns).length > 0 && { columns }),
    ...(Object.keys(articles).length > 0 && { articles }),
  };
}

/** Records as they come to be: new ones, and changed ones of the book. */
interface Written {
  /** By label. */
  readonly materials: Map<string, Material>;
  readonly packs: Map<string, Pack>;
  /** Ids of packs that the book does not have, by material and amount. */
  readonly newPacks: Map<string, string>;
  readonly prices: Map<string, PackPrice>;
}

interface Of {
  readonly records: Records;
  readonly supplier: string;
}

function takeRow(row: TakenRow, written: Written, of: Of): ActFault | undefined {
  const fault = dayFault(row.from);
  if (fault) return fault;
  const pack = packOfRow(row, written, of);
  if (!pack.ok) return pack.fault;
  const { article } = row;
  const { id } = pack.value;
  written.packs.set(id, {
    ...pack.value,
    ...(sellerOf(of.records, pack.value) === undefined && { supplier: of.supplier }),
    ...(article !== undefined && article !== '' && { article }),
  });
  const { from, priceCoins } = row;
  const prices = of.records.packPrice;
  const sameDay = pricesOf(of.records, id).find((each) => each.from === from);
  const price = sameDay?.id ?? freeId(`${id}@${from}`, prices);
  written.prices.set(price, { id: price, pack: id, from, priceCoins });
  return undefined;
}

function packOfRow(row: TakenRow, written: Written, of: Of): Result<Pack, ActFault> {
  if (row.act === 'price') return packById(row.pack, written, of);
  const material = row.act === 'new pack' ? findGoods(row.material, of.records) : newMaterial(row, written, of);
  if (!material.ok) return material;
  const typed = row.act === 'new pack' ? row.typed : undefined;
  return ok(packOf({ material: material.value, amount: row.amount, typed }, written, of));
}

function packById(id: string, written: Written, { records, supplier }: Of): Result<Pack, ActFault> {
  const pack = findRecord(records, 'pack', id);
  if (!pack.ok) return pack;
  const seller = sellerOf(records, pack.value) ?? supplier;
  return seller === supplier
    ? ok(written.packs.get(id) ?? pack.value)
    : failed({ kind: 'pack-of-another', pack: id, supplier, seller });
}

interface AskedPack {
  readonly material: string;
  readonly amount: number;
  readonly typed: string | undefined;
}

/** The supplier's pack of this amount, made if there is none yet. */
function packOf({ material, amount, typed }: AskedPack, written: Written, { records, supplier }: Of): Pack {
  const asked = { material, amount, supplier };
  const key = JSON.stringify([material, Number(amount.toPrecision(9))]);
  const id = findPack(records, asked)?.id ?? written.newPacks.get(key);
  const known = id === undefined ? undefined : (written.packs.get(id) ?? records.pack.get(id));
  if (known) return known;
  const isTaken = (each: string) => records.pack.has(each) || written.packs.has(each);
  const made = freeId(packId(material, amount), { has: isTaken });
  written.newPacks.set(key, made);
  return { id: made, ...asked, ...(typed !== undefined && { typed: { amount: typed } }) };
}

function findGoods(material: string, records: Records): Result<string, ActFault> {
  if (unitOfGoods(material, records) !== undefined) return ok(material);
  const near = nearestName(material, [...records.material.keys(), ...records.tank.keys()]);
  return failed({ kind: 'no-material', material, ...(near !== undefined && { near }) });
}

function newMaterial(
  { label, unit }: Extract<TakenRow, { act: 'new material' }>,
  { materials }: Written,
  { records, supplier }: Of,
): Result<string, ActFault> {
  const known = materials.get(label);
  if (known && known.unit !== unit) return failed({ kind: 'unit-of-another', label, unit, own: known.unit });
  if (known) return ok(known.id);
  if (!recordFields.material.unit.options?.some(({ value }) => value === unit))
    return failed({ kind: 'no-unit', unit });
  const taken = [...materials.values()].map(({ id }) => id);
  const id = nextCode('M', [...records.material.keys(), ...records.tank.keys(), ...records.plant.keys(), ...taken]);
  materials.set(label, freshRecord('material', id, { label, unit, supplier }));
  return ok(id);
}

function changeOf(
  { materials, packs, prices }: Written,
  records: Records,
): Pick<Change, 'added' | 'updated' | 'removed'> {
  const parts = [
    differing('material', new Map([...materials.values()].map((each) => [each.id, each])), records),
    differing('pack', packs, records),
    differing('packPrice', prices, records),
  ];
  return { added: parts.flatMap((each) => each.added), updated: parts.flatMap((each) => each.updated), removed: [] };
}

function differing<K extends 'material' | 'pack' | 'packPrice'>(
  kind: K,
  written: ReadonlyMap<string, RecordOf<K>>,
  records: Records,
): Pick<Change, 'added' | 'updated'> {
  const table: ReadonlyMap<string, RecordOf<K>> = records[kind];
  const all = [...written.values()];
  return {
    added: all.filter(({ id }) => !table.has(id)).map((record) => added(kind, record)),
    updated: all.flatMap((to) => {
      const from = table.get(to.id);
      return from === undefined || sameData(from, to) ? [] : [updated(kind, from, to)];
    }),
  };
}

/** A row as the act takes it. */
export function takenRow({
  known,
  material,
  article,
  label,
  pack,
  amount,
  unit,
  priceCoins,
  from,
}: PlacedRow): TakenRow {
  const price = { priceCoins, from, ...(article !== '' && { article }) };
  if (known) return { act: 'price', pack: known.id, ...price };
  if (material === undefined) return { act: 'new material', label, unit, amount, ...price };
  const isOwn = pack.unit === unit;
  return { act: 'new pack', material, amount, ...(!isOwn && { typed: `${pack.amount} ${pack.unit}` }), ...price };
}

/**
 * How a list was read, for the supplier's next one: what was said of it, and the article numbers of goods that neither
 * that nor the number of a pack tells.
 */
export function learnedMap(map: PriceListMap | undefined, taken: readonly PlacedRow[]): PriceListMap | undefined {
  const articles = taken.flatMap(({ article, material, known }): (readonly [string, string])[] =>
    article === '' || material === undefined || known?.article === article ? [] : [[article, material]],
  );
  const all = { ...Object.fromEntries(articles), ...map?.articles };
  return Object.keys(all).length === 0 ? map : { ...map, articles: all };
}
