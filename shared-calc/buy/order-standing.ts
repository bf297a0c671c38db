import { daysBetween, type Day } from '#shared-calc/calendar/day.ts';
import type { Move, Order, Records } from '#shared-calc/records/records.ts';
import { movesOfLine, NOTHING } from './ledger.ts';

export type OrderLine = Order['lines'][number];

export const orderStates = ['open', 'part in', 'in', 'closed'] as const;
export type OrderState = (typeof orderStates)[number];

/** A line of an order with what came of it; counts are packs, or parts of one. */
export interface LineStanding {
  readonly line: OrderLine;
  readonly came: number;
  /** Still to come; nothing once the order is closed. */
  readonly open: number;
  readonly paidCoins: number;
  /** The last day on which some of it came. */
  readonly cameOn?: Day;
}

export interface OrderStanding {
  readonly order: Order;
  readonly state: OrderState;
  readonly lines: readonly LineStanding[];
  readonly goodsCoins: number;
  /** Paid for what came. */
  readonly paidCoins: number;
  /** Asked for what is still to come. */
  readonly openCoins: number;
  /** The last day on which something is to come; of an order that is in or closed, the last of all its days. */
  readonly due: Day;
  /** Days since the first line that is still to come was due; 0 if none is late. */
  readonly lateDays: number;
}

/** What came of an order up to a day: its state is worked from its moves, and never stored. */
export function orderStanding(records: Pick<Records, 'move'>, order: Order, on: Day): OrderStanding {
  const isClosed = order.closedOn !== undefined && order.closedOn <= on;
  const all = order.lines.map((line) => lineStanding(line, receiptsOf(records, { order: order.id, line, on })));
  const isIn = all.every(({ open }) => open === 0);
  const lines = isClosed ? all.map((each) => ({ ...each, open: 0 })) : all;
  const waited = lines.filter(({ open }) => open > 0);
  const first = waited.map(({ line }) => line.due).toSorted()[0] ?? on;
  return {
    order,
    state: stateOf(all, { isIn, isClosed }),
    lines,
    goodsCoins: goodsCoins(order.lines),
    paidCoins: lines.reduce((sum, { paidCoins }) => sum + paidCoins, 0),
    openCoins: Math.round(lines.reduce((sum, { line, open }) => sum + open * line.askedCoins, 0)),
    due: lastDue(waited.length > 0 ? waited.map(({ line }) => line) : order.lines),
    lateDays: Math.max(0, daysBetween(first, on)),
  };
}

/** Something of it is still to come. */
export function isOpenOrder({ state }: Pick<OrderStanding, 'state'>): boolean {
  return state === 'open' || state === 'part in';
}

/** All of it came. */
export function isLineIn({ line, came }: LineStanding): boolean {
  return came > line.count - NOTHING;
}

/** Asked for all lines, without carriage. */
export function goodsCoins(lines: readonly Pick<OrderLine, 'count' | 'askedCoins'>[]): number {
  return lines.reduce((sum, { count, askedCoins }) => sum + count * askedCoins, 0);
}

/** The day on which the last of some lines is due. */
export function lastDue(lines: readonly Pick<OrderLine, 'due'>[]): Day {
  return (
    lines
      .map(({ due }) => due)
      .toSorted()
      .at(-1) ?? ''
  );
}

interface LineOn {
  readonly order: string;
  readonly line: OrderLine;
  readonly on: Day;
}

/** What came of a line up to a day, in order of day. */
function receiptsOf(records: Pick<Records, 'move'>, { order, line, on }: LineOn): readonly Move[] {
  return movesOfLine(records, order, line.n).filter((move) => move.what === 'in' && move.on <= on);
}

function lineStanding(line: OrderLine, came: readonly Move[]): LineStanding {
  const amount = came.reduce((sum, move) => sum + move.amount, 0);
  const cameOn = came.at(-1)?.on;
  return {
    line,
    came: amount / line.amount,
    open: line.count * line.amount - amount > NOTHING ? line.count - amount / line.amount : 0,
    paidCoins: came.reduce((sum, { coins = 0 }) => sum + coins, 0),
    ...(cameOn !== undefined && { cameOn }),
  };
}

interface Ended {
  readonly isIn: boolean;
  readonly isClosed: boolean;
}

function stateOf(lines: readonly LineStanding[], { isIn, isClosed }: Ended): OrderState {
  if (isIn) return 'in';
  if (isClosed) return 'closed';
  return lines.some(({ came }) => came > NOTHING) ? 'part in' : 'open';
}
