import { z } from 'zod';
import { packsOf, priceOn, sellerOf, sellersOf } from '#shared-calc/buy/pack-prices.ts';
import { dayFault, type Day as CalendarDay } from '#shared-calc/calendar/day.ts';
import { freeId } from '#shared-calc/jobs/find-job.ts';
import { writeNumber } from '#shared-calc/quantity/write-figure.ts';
import { added, emptyChange, updated, type Change } from '#shared-calc/records/change.ts';
import type { Pack, PackPrice, Records } from '#shared-calc/records/records.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { nearestName } from '#shared-calc/rule/nearest.ts';
import { roundCoins } from '#shared-calc/trade/price/coin-rounding.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { Day } from './inputs.ts';

const RaisePrices = z.strictObject({
  supplier: z.string(),
  share: z.number().min(-0.9).max(10).describe('0.12 for a rise of 12 %; below 0 for a fall.'),
  from: Day.optional().describe('The day it holds from; left out: today.'),
  materials: z.array(z.string()).min(1).optional().describe('Codes of goods; left out: everything that it sells.'),
});

export type PriceRise = z.infer<typeof RaisePrices>;

/** A price of a pack that rises. */
export interface RisenPrice {
  readonly pack: Pack;
  readonly before: PackPrice;
  readonly coins: number;
}

export const raisePrices = act<PriceRise>({
  name: 'raisePrices',
  says: "Raises a supplier's prices by a share from a day on, each pack to the coin; prices of other days stay.",
  input: RaisePrices,
  run: ({ records, today }, asked) => {
    const from = asked.from ?? today;
    const risen = risenPrices(records, { ...asked, from });
    return risen.ok ? ok(riseChange(records, risen.value, { ...asked, from })) : risen;
  },
});

/** Each pack of the supplier that has a price on the day, at old x (1 + share), half a coin up. */
export function risenPrices(
  records: Records,
  { supplier, share, from, materials }: PriceRise & { readonly from: CalendarDay },
): Result<readonly RisenPrice[], ActFault> {
  const fault = dayFault(from) ?? supplierFault(records, supplier);
  if (fault) return failed(fault);
  const strange = materials?.find((material) => !sellersOf(records, material).includes(supplier));
  if (strange !== undefined) return failed(strangeFault(records, strange, supplier));
  const codes = materials ?? new Set([...records.pack.values()].map(({ material }) => material));
  const packs = [...codes]
    .flatMap((code) => packsOf(records, code))
    .filter((pack) => sellerOf(records, pack) === supplier);
  const risen = packs.flatMap((pack) => {
    const before = priceOn(records, pack.id, from);
    return before ? [{ pack, before, coins: roundCoins(before.priceCoins * (1 + share)) }] : [];
  });
  if (risen.length === 0)
    return failed({ kind: 'nothing-priced', supplier, on: from, display: displayOf(workshopOf(records)) });
  return ok(risen);
}

function supplierFault({ supplier }: Records, id: string): ActFault | undefined {
  if (supplier.has(id)) return undefined;
  const near = nearestName(id, supplier.keys());
  return { kind: 'no-supplier', supplier: id, ...(near !== undefined && { near }) };
}

function strangeFault(records: Records, material: string, supplier: string): ActFault {
  const known = [...records.material.keys(), ...records.tank.keys(), ...records.plant.keys()];
  if (known.includes(material)) return { kind: 'not-sold-by', material, supplier };
  const near = nearestName(material, known);
  return { kind: 'no-material', material, ...(near !== undefined && { near }) };
}

/** Prices of that day are corrected in place; a price that stays as it is is not written. */
export function riseChange(
  { packPrice }: Records,
  risen: readonly RisenPrice[],
  { supplier, share, from }: PriceRise & { readonly from: CalendarDay },
): Change {
  const percent = `${share < 0 ? '' : '+'}${writeNumber(share * 100, 2)} %`;
  const change = emptyChange(`prices of ${supplier} ${percent} from ${from}`);
  const moved = risen.filter(({ before, coins }) => coins !== before.priceCoins);
  return {
    ...change,
    added: moved
      .filter(({ before }) => before.from !== from)
      .map(({ pack, coins }) =>
        added('packPrice', { id: freeId(`${pack.id}@${from}`, packPrice), pack: pack.id, from, priceCoins: coins }),
      ),
    updated: moved
      .filter(({ before }) => before.from === from)
      .map(({ before, coins }) => updated('packPrice', before, { ...before, priceCoins: coins })),
  };
}
