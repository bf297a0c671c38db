import { balance, lotsOf, stock } from '#shared-calc/buy/ledger.ts';
import type { Move, Records } from '#shared-calc/records/records.ts';

export interface Bag extends Partial<
  Pick<Move, 'on' | 'sealed' | 'until' | 'bestBefore' | 'coins' | 'note' | 'order' | 'line'>
> {
  readonly id?: string;
  readonly of: string;
  readonly amount: number;
  /** The job that all of it is kept for. */
  readonly job?: string | undefined;
}

/** A lot as its moves: what came, and what of it is kept. */
export function bagMoves({ id, of, amount, job, ...more }: Bag): readonly Move[] {
  const lot = id ?? `K-${of}`;
  const common = { lot, of, on: '2027-01-01', amount, note: '' };
  const came: Move = { ...common, ...more, id: lot, what: 'in' };
  return job === undefined ? [came] : [came, { ...common, on: came.on, id: `${lot}-kept`, what: 'kept', job }];
}

/** The book with these lots beside what is there. */
export function withBags(records: Records, bags: readonly Bag[]): Records {
  const moves = bags.flatMap(bagMoves).map((move) => [move.id, move] as const);
  return { ...records, move: new Map([...records.move, ...moves]) };
}

/** The book with nothing in the Store. */
export function emptyStore(records: Records): Records {
  return { ...records, move: new Map() };
}

/** What stands of goods on a day. */
export function standsOf(records: Records, goods: string, on: string): number {
  return lotsOf(records, goods).reduce((sum, lot) => sum + balance(lot, on), 0);
}

/** What a job can use of goods on a day: kept for it, and free. */
export function usableFor(records: Records, goods: string, { on, job = '' }: { on: string; job?: string }): number {
  const { free, kept } = stock(records, goods, { asked: on });
  return free + (kept.get(job) ?? 0);
}

/** What is kept of goods for a job. */
export function keptFor(records: Records, goods: string, { on, job }: { on: string; job: string }): number {
  return stock(records, goods, { asked: on }).kept.get(job) ?? 0;
}
