import type { Day } from '#shared-calc/calendar/day.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { balance, isOpened, keptIn, lotsOf, NOTHING, type Lot } from './ledger.ts';

/** A part of one lot. */
export interface LotPart {
  readonly lot: Lot;
  readonly amount: number;
}

/**
 * What may give: `usable`, for a use or a sale; `standing`, for what is kept for a job, goods in quarantine as well;
 * `all`, for a loss or a count, goods past their best first and what is kept for others last.
 */
export type Giving = 'usable' | 'standing' | 'all';

export interface Taking {
  /** The goods, and what else may be taken for them. */
  readonly members: readonly string[];
  readonly amount: number;
  readonly on: Day;
  /** What is kept for this job may be taken, and is taken first. */
  readonly job?: string | undefined;
  /** Only from this lot. */
  readonly lot?: string | undefined;
  readonly from: Giving;
  /** The day they are for: lots that can be used on it go first. Left out: the day they are taken. */
  readonly use?: Day | undefined;
}

/**
 * Parts of lots that make up an amount: kept for the job, opened, soonest best before. They come to less than asked if
 * there is less to give. A later move never loses what it took.
 */
export function takeLots(records: Pick<Records, 'move'>, taking: Taking): readonly LotPart[] {
  const lots = taking.members
    .flatMap((of) => lotsOf(records, of))
    .filter((lot) => (taking.lot === undefined || lot.id === taking.lot) && mayGive(lot, taking))
    .map((lot) => ({ lot, ...looseFrom(lot, taking) }))
    .toSorted((one, other) => inOrder(one, other, taking));
  const rounds: readonly (keyof Loose)[] = taking.from === 'all' ? ['own', 'loose', 'others'] : ['own', 'loose'];
  const taken = new Map<Lot, number>();
  let left = taking.amount;
  for (const round of rounds) {
    for (const each of lots) {
      const part = Math.min(left, each[round]);
      if (part <= NOTHING) continue;
      taken.set(each.lot, (taken.get(each.lot) ?? 0) + part);
      left -= part;
    }
  }
  return [...taken].map(([lot, amount]) => ({ lot, amount }));
}

export function partsSum(parts: readonly LotPart[]): number {
  return parts.reduce((sum, { amount }) => sum + amount, 0);
}

function mayGive({ came: { on, until = '', bestBefore = '9999-12-31' } }: Lot, taking: Taking): boolean {
  if (on > taking.on) return false;
  if (taking.from === 'all') return true;
  return bestBefore >= taking.on && (taking.from === 'standing' || until <= taking.on);
}

interface Loose {
  /** Kept for the job that takes. */
  readonly own: number;
  /** Kept for nobody. */
  readonly loose: number;
  readonly others: number;
}

/** What a lot can give on a day without what was taken of it later. */
function looseFrom(lot: Lot, { on, job }: Taking): Loose {
  const days = [on, ...lot.moves.map((move) => move.on).filter((day) => day > on)];
  const each = days.map((day) => {
    const kept = keptIn(lot, day);
    const stands = balance(lot, day);
    const all = [...kept.values()].reduce((sum, amount) => sum + amount, 0);
    return { stands, own: kept.get(job ?? '') ?? 0, loose: stands - all };
  });
  const least = (of: (one: (typeof each)[number]) => number) => Math.max(0, Math.min(...each.map(of)));
  const stands = least((one) => one.stands);
  const own = Math.min(
    stands,
    least((one) => one.own),
  );
  const loose = Math.min(
    stands - own,
    least((one) => one.loose),
  );
  return { own, loose, others: stands - own - loose };
}

interface Given {
  readonly lot: Lot;
}

function inOrder({ lot: one }: Given, { lot: other }: Given, { on, from, use = on }: Taking): number {
  const past = (lot: Lot) => Number(from === 'all' && (lot.came.bestBefore ?? '9999-12-31') < on);
  const opened = (lot: Lot) => Number(isOpened(lot, on));
  return (
    past(other) - past(one) ||
    Number(isUnfit(one, use, from)) - Number(isUnfit(other, use, from)) ||
    opened(other) - opened(one) ||
    compare(one.came.bestBefore ?? '9999-12-31', other.came.bestBefore ?? '9999-12-31') ||
    compare(one.id, other.id)
  );
}

/** In quarantine on the day of use, or by then past its best; what was past it before is lost first. */
function isUnfit({ came: { until = '', bestBefore = '9999-12-31' } }: Lot, use: Day, from: Giving): boolean {
  return until > use || (from === 'standing' && bestBefore < use);
}

function compare(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}
