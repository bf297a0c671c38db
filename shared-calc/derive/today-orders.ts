import type { Day } from '#shared-calc/calendar/day.ts';
import { NOTHING } from '#shared-calc/buy/ledger.ts';
import { sayDay } from '#shared-calc/prepare/say-day.ts';
import type { Order, Records } from '#shared-calc/records/records.ts';
import type { Derived } from './derived.ts';
import { builder, type TodayDraft } from './today-item.ts';

/** Orders with something still to come, on the day on which the first of it is due. */
export function orderItems({ records, today }: Derived): readonly TodayDraft[] {
  return [...records.order.values()].flatMap((order) => orderItem(order, records, today) ?? []);
}

function orderItem(order: Order, records: Records, today: Day): TodayDraft | undefined {
  const open = openLines(order, records, today);
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
    why: `${supplier}, promised for ${sayDay(due)}; ${open.length} of ${order.lines.length} lines are out`,
    tick: { is: 'go' },
  };
}

/** Lines of which something is still to come; none of an order that is closed. */
function openLines({ id, on, closedOn, lines }: Order, records: Records, today: Day): Order['lines'] {
  if (on > today || (closedOn !== undefined && closedOn <= today)) return [];
  return lines.filter((line) => line.count * line.amount - cameOf(id, line.n, records) > NOTHING);
}

function cameOf(order: string, line: number, { move }: Pick<Records, 'move'>): number {
  return [...move.values()]
    .filter((each) => each.order === order && each.line === line && each.what === 'in')
    .reduce((sum, { amount }) => sum + amount, 0);
}
