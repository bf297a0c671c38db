import { z } from 'zod';
import type { Take } from '#shared-calc/buy/allot.ts';
import { priceOn, sellerOf } from '#shared-calc/buy/pack-prices.ts';
import { goodsLabel, unitInStore } from '#shared-calc/buy/unit-of-goods.ts';
import { orderStanding } from '#shared-calc/buy/order-standing.ts';
import { dayFault, type Day as OnDay } from '#shared-calc/calendar/day.ts';
import type { Derived } from '#shared-calc/derive/derived.ts';
import { draftsOf, placementOf, type OrderDraft, type SuppliedLine } from '#shared-calc/derive/placement.ts';
import { moveIds, movesAdded, partMoves } from '#shared-calc/jobs/written-moves.ts';
import { spendChoices } from '#shared-calc/jobs/pack-choices.ts';
import { added, emptyChange, squashChanges, updated, type Change } from '#shared-calc/records/change.ts';
import type { Order, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { act } from './act.ts';
import type { ActFault } from './act-fault.ts';
import { findRecord } from './find-record.ts';
import { withStates } from './goods-moved.ts';
import { Day } from './inputs.ts';
import { nextNumber } from './next-number.ts';
import { movedAnyway, reasonFields } from './reason.ts';
import { recordChanged } from './record-changes.ts';

const on = Day.optional().describe('Left out: today.');
const note = z.string().max(2_000).default('');

const PlaceOrders = z.strictObject({
  jobs: z.array(z.string()).min(1),
  suppliers: z.array(z.string()).min(1).optional().describe('Left out: all of them.'),
  on,
  note,
  ...reasonFields,
});

export const placeOrders = act<z.infer<typeof PlaceOrders>>({
  name: 'placeOrders',
  says: 'Places one order with each supplier for what jobs need, and keeps for them what the Store and open orders give. What has no supplier, no price or no season is left out.',
  input: PlaceOrders,
  run: (derived, { jobs, suppliers, on: day, note: words, ...reason }) => {
    const then = onDay(derived, day);
    if (!then.ok) return then;
    for (const id of suppliers ?? []) {
      const found = findRecord(derived.records, 'supplier', id);
      if (!found.ok) return found;
    }
    const placed = placementOf(then.value, jobs);
    if (!placed.ok) return placed;
    const { drafts, takes } = placed.value;
    const asked = drafts.filter(({ supplier }) => !suppliers || suppliers.includes(supplier.id));
    const orders = ordersOf(then.value, asked, words);
    const parts = [
      ordersAdded(orders),
      keptOf(then.value, takes),
      promisedOf(then.value.records, takes),
      spendChoices(
        derived.records,
        jobs,
        orders.flatMap(({ lines }) => lines.map(({ of }) => of)),
      ),
    ];
    const change = squashChanges(labelOf(orders, jobs), parts);
    return movedAnyway(then.value, withStates(then.value, change, jobsOf(orders)), reason);
  },
});

/** The derivation on the day of an act. */
function onDay(derived: Derived, day: OnDay | undefined): Result<Derived, ActFault> {
  if (day === undefined || day === derived.today) return ok(derived);
  const fault = dayFault(day);
  return fault ? failed(fault) : ok(derived.update(derived.records, day));
}

function ordersOf({ records, today }: Derived, drafts: readonly OrderDraft[], words: string): readonly Order[] {
  const ids = [...records.order.keys()];
  return drafts.map(({ supplier, lines, carriageCoins, note: instead }) => {
    const id = `O-${nextNumber('O', ids, 4)}`;
    ids.push(id);
    return {
      id,
      supplier: supplier.id,
      on: today,
      lines: [...lines],
      carriageCoins,
      note: [words, instead].filter(Boolean).join('\n'),
    };
  });
}

function ordersAdded(orders: readonly Order[]): Change {
  return { ...emptyChange(''), added: orders.map((order) => added('order', order)) };
}

function jobsOf(orders: readonly Pick<Order, 'lines'>[]): readonly string[] {
  return [...new Set(orders.flatMap(({ lines }) => lines.flatMap((line) => line.for.map(({ job }) => job))))];
}

function labelOf(orders: readonly Order[], jobs: readonly string[]): string {
  const ids = orders.map(({ id }) => id).join(', ');
  return orders.length > 0 ? `${ids} ordered for ${jobs.join(', ')}` : `kept for ${jobs.join(', ')}: what there is`;
}

type Takes = ReadonlyMap<string, readonly Take[]>;

/** What the Store lends to the jobs is kept for them. */
function keptOf({ records, today }: Derived, takes: Takes): Change {
  const nextId = moveIds(records);
  const moves = [...takes.values()].flat().flatMap(({ job, lots }) => {
    return partMoves(lots, { on: today, what: 'kept', job }, nextId);
  });
  return movesAdded('', moves);
}

/** What is ordered for nobody and is given to the jobs is for them from now on. */
function promisedOf({ order }: Pick<Records, 'order'>, takes: Takes): Change {
  const next = new Map<string, Order>();
  for (const { job, lines } of [...takes.values()].flat()) {
    for (const { order: id, line: n, amount } of lines) {
      const before = next.get(id) ?? order.get(id);
      if (before) next.set(id, withPart(before, n, { job, amount }));
    }
  }
  const changed = [...next].flatMap(([id, to]) => {
    const from = order.get(id);
    return from ? [updated('order', from, to)] : [];
  });
  return { ...emptyChange(''), updated: changed };
}

function withPart(order: Order, n: number, part: Order['lines'][number]['for'][number]): Order {
  return { ...order, lines: order.lines.map((line) => (line.n === n ? { ...line, for: [...line.for, part] } : line)) };
}

const NewOrder = z.strictObject({
  supplier: z.string(),
  packs: z
    .array(z.strictObject({ pack: z.string().describe('Such as M01-10.'), count: z.int().min(1).max(99_999) }))
    .min(1),
  on,
  note,
});

export const newOrder = act<z.infer<typeof NewOrder>>({
  name: 'newOrder',
  says: 'Places an order with a supplier for the Store, by packs that it sells.',
  input: NewOrder,
  run: (derived, { supplier, packs, on: day, note: words }) => {
    const then = onDay(derived, day);
    if (!then.ok) return then;
    const found = findRecord(derived.records, 'supplier', supplier);
    if (!found.ok) return found;
    const lines: SuppliedLine[] = [];
    for (const asked of packs) {
      const line = packLine(then.value, supplier, asked);
      if (!line.ok) return line;
      lines.push(line.value);
    }
    const orders = ordersOf(then.value, draftsOf(then.value, lines), words);
    const id = orders[0]?.id ?? '';
    return ok({ ...ordersAdded(orders), label: `${id} ordered from ${found.value.name} for the store` });
  },
});

function packLine(
  { records, today, display }: Derived,
  supplier: string,
  { pack: id, count }: z.infer<typeof NewOrder>['packs'][number],
): Result<SuppliedLine, ActFault> {
  const pack = findRecord(records, 'pack', id);
  if (!pack.ok) return pack;
  const { material: of, amount } = pack.value;
  const seller = sellerOf(records, pack.value);
  if (seller !== undefined && seller !== supplier)
    return failed({ kind: 'pack-of-another', pack: id, supplier, seller });
  const price = priceOn(records, id, today);
  if (!price) return failed({ kind: 'pack-without-price', pack: id, on: today, display });
  const [label, unit] = [goodsLabel(of, records), unitInStore(of, records) ?? 'each'];
  return ok({ supplier, of, label, amount, unit, count, askedCoins: price.priceCoins, for: [] });
}

const CloseOrder = z.strictObject({ order: z.string(), on });

export const closeOrder = act<z.infer<typeof CloseOrder>>({
  name: 'closeOrder',
  says: 'Closes an order: what has not come is not coming, and is needed again.',
  input: CloseOrder,
  run: ({ records, today, display }, { order: id, on: day = today }) => {
    const fault = dayFault(day);
    if (fault) return failed(fault);
    const found = findRecord(records, 'order', id);
    if (!found.ok) return found;
    const from = found.value;
    const { state } = orderStanding(records, from, day);
    if (state === 'in') return failed({ kind: 'order-all-in', order: id });
    if (from.closedOn !== undefined)
      return failed({ kind: 'order-closed', order: id, closedOn: from.closedOn, display });
    if (day < from.on) return failed({ kind: 'before-ordered', order: id, ordered: from.on, on: day, display });
    return ok(recordChanged(`${id} closed: the rest is not coming`, 'order', { from, to: { ...from, closedOn: day } }));
  },
});
