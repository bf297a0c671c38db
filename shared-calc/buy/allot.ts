import type { Day } from '#shared-calc/calendar/day.ts';
import { NOTHING, type GoodsStock, type Lot } from './ledger.ts';
import type { Supply } from './material-need.ts';
import { NO_STOCK, type Stock } from './stock.ts';

/** A job that wants goods, each on its own day of use. */
export interface Claim {
  readonly job: string;
  /** In the unit of each material. */
  readonly needs: ReadonlyMap<string, number>;
  readonly useOn: (material: string) => Day;
}

/** What of a material is there for some jobs together. */
export interface AllottedGoods {
  /** In the store for them: kept for one of them or free, usable on a day of use. */
  readonly onHand: number;
  /** Of that, kept for each of them. */
  readonly kept: ReadonlyMap<string, number>;
  /** Given to them of what is on hand. */
  readonly given: number;
  /** Given to them of what is ordered. */
  readonly coming: number;
  /** What a job keeps over its need; lent to nobody. */
  readonly over: ReadonlyMap<string, number>;
  /** Given to them of what was kept and ordered for nobody. */
  readonly lent: number;
}

/** Of a material that no job wants. */
export const NOTHING_GIVEN: AllottedGoods = {
  onHand: 0,
  kept: NO_STOCK,
  given: 0,
  coming: 0,
  over: NO_STOCK,
  lent: 0,
};

/** An amount of one lot. */
export interface LotShare {
  readonly lot: Lot;
  readonly amount: number;
}

/** An amount of one line of an open order. */
export interface LineShare {
  readonly order: string;
  readonly line: number;
  readonly of: string;
  readonly amount: number;
}

/** What one job is given of a material before anything is bought. */
export interface Take {
  readonly job: string;
  /** Kept for it already. */
  readonly kept: number;
  /** Of what is kept for it. */
  readonly own: number;
  /** Ordered for it already, however late it comes. */
  readonly ordered: number;
  /** On hand beside the store. */
  readonly beside: number;
  /** Lent of what is free in the store. */
  readonly lots: readonly LotShare[];
  /** Lent of what is ordered for nobody. */
  readonly lines: readonly LineShare[];
  /** All that it is given, by what it is of: plants by their kind. */
  readonly has: readonly { readonly of: string; readonly amount: number }[];
  /** Still to be bought. */
  readonly rest: number;
}

export interface Allotment {
  /** By material, jobs in order of their day of use. */
  readonly takes: ReadonlyMap<string, readonly Take[]>;
  /** What each job is given of each material. */
  readonly given: ReadonlyMap<string, ReadonlyMap<string, Supply>>;
  readonly goods: ReadonlyMap<string, AllottedGoods>;
}

export interface Supplies {
  readonly stockOn: (material: string, use: Day) => GoodsStock;
  /** On hand beside the store. */
  readonly more: Stock;
  /** Cut to size: what was cut for nobody fits nobody. */
  readonly isCut: (material: string) => boolean;
}

/**
 * What the store and the open orders give to jobs, in order of their day of use, equal ones as listed. Each takes what is
 * kept and ordered for it, then what is free, then what is ordered for nobody.
 */
export function allot(claims: readonly Claim[], supplies: Supplies): Allotment {
  const given = new Map(claims.map(({ job }) => [job, new Map<string, Supply>()]));
  const goods = new Map<string, AllottedGoods>();
  const all = new Map<string, readonly Take[]>();
  for (const material of new Set(claims.flatMap(({ needs }) => [...needs.keys()]))) {
    const takes = takesOf(material, claims, supplies);
    for (const take of takes.each) given.get(take.job)?.set(material, supplyOf(take));
    goods.set(material, allotted(takes));
    all.set(material, takes.each);
  }
  return { given, goods, takes: all };
}

function supplyOf({ own, ordered, ...lent }: Take): Supply {
  return { stock: own + fromStore(lent), coming: ordered + sumOf(lent.lines), cut: own };
}

function fromStore({ beside, lots }: Pick<Take, 'beside' | 'lots'>): number {
  return beside + sumOf(lots);
}

interface Takes {
  readonly each: readonly Take[];
  /** Free in the store, before it was lent. */
  readonly free: number;
}

function takesOf(material: string, claims: readonly Claim[], { stockOn, more, isCut }: Supplies): Takes {
  const wanting = claims
    .filter(({ needs }) => needs.has(material))
    .map((claim) => ({ job: claim.job, need: claim.needs.get(material) ?? 0, use: claim.useOn(material) }))
    .toSorted((one, other) => (one.use < other.use ? -1 : Number(one.use > other.use)));
  const pool: Pool = new Map();
  const free = new Map([[MORE, more.get(material) ?? 0]]);
  const each = wanting.map(({ job, need, use }): Take => {
    const now = stockOn(material, use);
    const kept = now.kept.get(job) ?? 0;
    const own = Math.min(need, kept);
    // What is ordered for a job is not ordered again, however late it comes.
    const ordered = Math.min(need - own, sumOf(orderedFor(now, job)));
    const had = { job, kept, own, ordered };
    const has = [...keptFor(now, job), ...orderedFor(now, job)];
    const rest = need - own - ordered;
    if (isCut(material)) return { ...had, beside: 0, lots: [], lines: [], has, rest };
    const usable = now.lots.filter((lot) => lot.usable);
    for (const { lot, loose } of usable) free.set(lot.id, loose);
    const lent = lend(pool, rest, { more: more.get(material) ?? 0, now, use });
    const left = rest - fromStore(lent) - sumOf(lent.lines);
    const goods = [...lent.lots.map(({ lot, amount }) => ({ of: lot.of, amount })), ...lent.lines];
    return { ...had, ...lent, has: [...has, ...goods], rest: Math.max(0, left) };
  });
  return { each, free: sum([...free.values()]) };
}

function keptFor({ lots }: GoodsStock, job: string): Take['has'] {
  return lots.filter(({ usable }) => usable).map(({ lot, kept }) => ({ of: lot.of, amount: kept.get(job) ?? 0 }));
}

function orderedFor({ lines }: GoodsStock, job: string): Take['has'] {
  return lines.map(({ line, kept }) => ({ of: line.of, amount: kept.get(job) ?? 0 }));
}

/** What was lent of each lot and line already. */
type Pool = Map<string, number>;

const MORE = 'beside the store';

interface Lender {
  readonly more: number;
  readonly now: GoodsStock;
  readonly use: Day;
}

/** Lends what is beside the store before the lots, and them before what is ordered, each only once. */
function lend(pool: Pool, most: number, { more, now, use }: Lender): Pick<Take, 'beside' | 'lots' | 'lines'> {
  let left = most;
  const part = (id: string, there: number): number => {
    const before = pool.get(id) ?? 0;
    const amount = Math.max(0, Math.min(left, there - before));
    pool.set(id, before + amount);
    left -= amount;
    return amount;
  };
  const beside = part(MORE, more);
  const lots = now.lots
    .filter(({ usable }) => usable)
    .map(({ lot, loose }): LotShare => ({ lot, amount: part(lot.id, loose) }));
  const lines = now.lines
    .filter(({ clearOn }) => clearOn <= use)
    .map(({ order, line: { n, of }, loose }): LineShare => {
      return { order, line: n, of, amount: part(`${order} ${n}`, loose) };
    });
  return { beside, lots: lots.filter(isSome), lines: lines.filter(isSome) };
}

function isSome({ amount }: { readonly amount: number }): boolean {
  return amount > NOTHING;
}

function allotted({ each, free }: Takes): AllottedGoods {
  return {
    onHand: free + sum(each.map(({ kept }) => kept)),
    kept: byJob(each, ({ kept }) => kept),
    given: sum(each.map((take) => take.own + fromStore(take))),
    coming: sum(each.map(({ ordered, lines }) => ordered + sumOf(lines))),
    over: byJob(each, ({ kept, own }) => kept - own),
    lent: sum(each.map((take) => fromStore(take) + sumOf(take.lines))),
  };
}

function byJob(takes: readonly Take[], of: (take: Take) => number): ReadonlyMap<string, number> {
  return new Map(takes.map((take) => [take.job, of(take)] as const).filter(([, amount]) => amount > NOTHING));
}

function sumOf(parts: readonly { readonly amount: number }[]): number {
  return sum(parts.map(({ amount }) => amount));
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((total, amount) => total + amount, 0);
}
