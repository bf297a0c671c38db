import { z } from 'zod';
import { findPack, packId, packsOf, usualSupplier, type PackAsked } from '#shared-calc/buy/pack-prices.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { dayFault } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { added, emptyChange, updated } from '#shared-calc/records/change.ts';
import { recordKinds, type Pack, type PackPrice, type Records } from '#shared-calc/records/records.ts';
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
  run: ({ records }, wanted) => {
    const unit = unitOf(records, wanted.material);
    if (!unit.ok) return unit;
    const pack = freshPack(records, wanted);
    if (!pack.ok) return pack;
    const there = findPack(records, pack.value);
    if (there && there.supplier === pack.value.supplier)
      return failed({ kind: 'pack-there', material: wanted.material });
    const label = `pack of ${cleanNoise(wanted.amount)} ${unit.value} of ${wanted.material}`;
    return ok(recordAdded(label, 'pack', { ...pack.value, ...(wanted.article && { article: wanted.article }) }));
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
    if (sameDay)
      return ok(recordChanged(label, 'packPrice', { from: sameDay, to: { ...withoutGuess(sameDay), priceCoins } }));
    const id = freeId(`${pack.id}@${from}`, records.packPrice);
    const price = added('packPrice', { id, pack: pack.id, from, priceCoins });
    return ok(recordsAdded(label, known ? [price] : [added('pack', pack), price]));
  },
});

const ConfirmPrices = z.strictObject({
  materials: z.array(z.string()).min(1).describe('Materials, tanks or plants of which a price is a guess.'),
});

export const confirmPrices = act<z.infer<typeof ConfirmPrices>>({
  name: 'confirmPrices',
  says: 'Takes guessed prices as asked of the supplier, so that they may stand in a quote.',
  input: ConfirmPrices,
  run: ({ records }, { materials }) => {
    for (const material of materials) {
      const unit = unitOf(records, material);
      if (!unit.ok) return unit;
    }
    const packs = new Set(materials.flatMap((material) => packsOf(records, material).map(({ id }) => id)));
    const guessed = [...records.packPrice.values()].filter(({ pack, guess }) => guess && packs.has(pack));
    const label = materials.length === 1 ? `price of ${materials.join('')} asked` : `${materials.length} prices asked`;
    return ok({
      ...emptyChange(label),
      updated: guessed.map((from) => updated('packPrice', from, withoutGuess(from))),
    });
  },
});

/** The price as one that a supplier was asked for. */
function withoutGuess({ id, pack, from, priceCoins }: PackPrice): PackPrice {
  return { id, pack, from, priceCoins };
}

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
