import { z } from 'zod';
import { findPack, packId, usualSupplier, type PackAsked } from '#shared-calc/buy/pack-prices.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { dayFault } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { added } from '#shared-calc/records/change.ts';
import { recordKinds, type Pack, type Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { Coins, Day } from './inputs.ts';
import { recordAdded, recordChanged, recordsAdded } from './record-changes.ts';

const amount = z
  .number()
  .positive()
  .describe("What the pack holds, in the material's own unit; 1 for a tank or a plant.");
const supplier = z.string().optional().describe('Who sells it; left out: the usual supplier.');
const article = recordKinds.pack.shape.article;
const NewPack = z.strictObject({ material: z.string(), amount, supplier, article });

export const newPack = act<z.infer<typeof NewPack>>({
  name: 'newPack',
  says: 'Adds a size of pack that a supplier sells a material in.',
  input: NewPack,
  run: ({ records }, asked) => {
    const unit = unitOf(records, asked.material);
    if (!unit.ok) return unit;
    const pack = freshPack(records, asked);
    if (!pack.ok) return pack;
    const there = findPack(records, pack.value);
    if (there && there.supplier === pack.value.supplier)
      return failed({ kind: 'pack-there', material: asked.material });
    const label = `pack of ${cleanNoise(asked.amount)} ${unit.value} of ${asked.material}`;
    return ok(recordAdded(label, 'pack', { ...pack.value, ...(asked.article && { article: asked.article }) }));
  },
});

const PutPrice = z.strictObject({
  material: z.string(),
  amount,
  supplier,
  priceCoins: Coins,
  from: Day.optional().describe('The day it holds from; left out: today.'),
});

/**
 * A new price is a new record with its day, so that issued quotes stay right; only a price of the same day is corrected
 * in place. A pack that is not in the book is added with its price.
 */
export const putPrice = act<z.infer<typeof PutPrice>>({
  name: 'putPrice',
  says: 'Sets what a pack costs from a day on; prices of other days stay.',
  input: PutPrice,
  run: (derived, { priceCoins, from = derived.today, ...of }) => {
    const { records } = derived;
    const fault = dayFault(from);
    if (fault) return failed(fault);
    const unit = unitOf(records, of.material);
    if (!unit.ok) return unit;
    const known = findPack(records, of);
    const made = known ? ok(known) : freshPack(records, of);
    if (!made.ok) return made;
    const pack = made.value;
    const label = `${sayPack(pack)} at ${sayCoins(derived, priceCoins)} from ${from}`;
    const sameDay = [...records.packPrice.values()].find((price) => price.pack === pack.id && price.from === from);
    if (sameDay) return ok(recordChanged(label, 'packPrice', { from: sameDay, to: { ...sameDay, priceCoins } }));
    const id = freeId(`${pack.id}@${from}`, records.packPrice);
    const price = added('packPrice', { id, pack: pack.id, from, priceCoins });
    return ok(recordsAdded(label, known ? [price] : [added('pack', pack), price]));
  },
});

function unitOf(records: Records, material: string): Result<string, ActFault> {
  const unit = unitOfGoods(material, records);
  if (unit !== undefined) return ok(unit);
  const near = nearestName(material, [...records.material.keys(), ...records.tank.keys()]);
  return failed({ kind: 'no-material', material, ...(near !== undefined && { near }) });
}

/** A pack as it would be made; it is the usual supplier's where nobody is named. */
function freshPack(records: Records, { material, amount: holds, supplier: asked }: PackAsked): Result<Pack, ActFault> {
  const seller = asked ?? usualSupplier(records, material);
  if (asked !== undefined && !records.supplier.has(asked))
    return failed({ kind: 'no-record', record: { kind: 'supplier', id: asked } });
  const id = freeId(packId(material, holds), records.pack);
  return ok({ id, material, amount: holds, ...(seller !== undefined && { supplier: seller }) });
}

function sayPack({ material, amount: holds }: Pick<Pack, 'material' | 'amount'>): string {
  return holds === 1 ? material : `${material} pack of ${holds}`;
}

function sayCoins({ workshop: { coinDecimals, decimalComma } }: Derived, coins: number): string {
  return writeNumber(coins / 10 ** coinDecimals, coinDecimals, { decimalComma });
}
