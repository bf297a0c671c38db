import { z } from 'zod';
import { packId } from '#shared-calc/buy/pack-prices.ts';
import { unitOfGoods } from '#shared-calc/buy/unit-of-goods.ts';
import { dayFault } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { cleanNoise, writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { added } from '#shared-calc/records/change.ts';
import type { Pack, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { Coins, Day } from './inputs.ts';
import { recordAdded, recordChanged, recordsAdded } from './record-changes.ts';

const amount = z.number().positive().describe("What the pack holds, in the material's own unit; 1 for a tank.");
const NewPack = z.strictObject({ material: z.string(), amount });

export const newPack = act<z.infer<typeof NewPack>>({
  name: 'newPack',
  says: 'Adds a size of pack that a material is sold in.',
  input: NewPack,
  run: ({ records }, asked) => {
    const unit = unitOf(records, asked.material);
    if (!unit.ok) return unit;
    if (findPack(records, asked)) return failed({ kind: 'pack-there', material: asked.material });
    const label = `pack of ${cleanNoise(asked.amount)} ${unit.value} of ${asked.material}`;
    return ok(recordAdded(label, 'pack', { id: freeId(packId(asked.material, asked.amount), records.pack), ...asked }));
  },
});

const PutPrice = z.strictObject({
  material: z.string(),
  amount,
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
    const pack = known ?? { id: freeId(packId(of.material, of.amount), records.pack), ...of };
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

function findPack({ pack }: Records, of: Pick<Pack, 'material' | 'amount'>): Pack | undefined {
  return [...pack.values()].find(({ material, amount: holds }) => material === of.material && holds === of.amount);
}

function sayPack({ material, amount: holds }: Pick<Pack, 'material' | 'amount'>): string {
  return holds === 1 ? material : `${material} pack of ${holds}`;
}

function sayCoins({ workshop: { coinDecimals, decimalComma } }: Derived, coins: number): string {
  return writeNumber(coins / 10 ** coinDecimals, coinDecimals, { decimalComma });
}
