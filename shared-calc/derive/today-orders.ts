import { orderStanding } from '#shared-calc/buy/order-standing.ts';
import { sayDay } from '#shared-calc/prepare/say-day.ts';
import type { Order } from '#shared-calc/records/records.ts';
import type { Derived } from './derived.ts';
import { builder, type TodayDraft } from './today-item.ts';

/** Orders with something still to come, on the day on which the first of it is due. */
export function orderItems(derived: Derived): readonly TodayDraft[] {
  return [...derived.records.order.values()].flatMap((order) => orderItem(order, derived) ?? []);
}

function orderItem(order: Order, { records, today, display }: Derived): TodayDraft | undefined {
  if (order.on > today) return undefined;
  const { lines } = orderStanding(records, order, today);
  const open = lines.filter((each) => each.open > 0).map(({ line }) => line);
  const due = open.map((line) => line.due).toSorted()[0];
  if (due === undefined) return undefined;
  const jobs = new Set(open.flatMap((line) => line.for.map(({ job }) => job)));
  const [job] = jobs;
  const supplier = records.supplier.get(order.supplier)?.name || order.supplier;
  return {
    key: `${order.id} due`,
    order: order.id,
    ...(job !== undefined && jobs.size === 1 && { job }),
    day: due,
    what: due < today ? `take in ${order.id}, or ask` : `take in ${order.id}`,
    who: builder,
    why: `${supplier}, promised for ${sayDay(due, display)}; ${open.length} of ${order.lines.length} lines are out`,
    tick: { is: 'go' },
  };
}
