import type { Day } from '#shared-calc/calendar/day.ts';
import { NOTHING, type GoodsStock } from './ledger.ts';
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

export interface Allotment {
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
  for (const material of new Set(claims.flatMap(({ needs }) => [...needs.keys()]))) {
    const takes = takesOf(material, claims, supplies);
    for (const { job, own, free, coming } of takes.each) given.get(job)?.set(material, { stock: own + free, coming });
    goods.set(material, allotted(takes));
  }
  return { given, goods };
}

interface Take {
  readonly job: string;
  readonly kept: number;
  /** Of what is kept for it. */
  readonly own: number;
  readonly free: number;
  readonly coming: number;
  readonly comingFree: number;
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
  const store = new Map<string, Loose>([[MORE, { there: more.get(material) ?? 0, lent: 0 }]]);
  const orders = new Map<string, Loose>();
  const each = wanting.map(({ job, need, use }): Take => {
    const now = stockOn(material, use);
    const kept = now.kept.get(job) ?? 0;
    const own = Math.min(need, kept);
    // What is ordered for a job is not ordered again, however late it comes.
    const ordered = Math.min(need - own, sum(now.lines.map((line) => line.kept.get(job) ?? 0)));
    if (isCut(material)) return { job, kept: 0, own: 0, free: 0, coming: own + ordered, comingFree: 0 };
    const lots = now.lots.filter(({ usable }) => usable).map(({ lot, loose }) => [lot.id, loose] as const);
    const lines = now.lines.filter(({ clearOn }) => clearOn <= use);
    const free = lend(store, [[MORE, 0], ...lots], need - own - ordered);
    const rows = lines.map(({ order, line, loose }) => [`${order} ${line.n}`, loose] as const);
    const comingFree = lend(orders, rows, need - own - ordered - free);
    return { job, kept, own, free, coming: ordered + comingFree, comingFree };
  });
  return { each, free: sum([...store.values()].map(({ there }) => there)) };
}

/** A lot, or a line of an order, and what of it is kept for nobody. */
interface Loose {
  readonly there: number;
  readonly lent: number;
}

const MORE = 'beside the store';

/** Lends of the first before the next, what was not lent yet. */
function lend(pool: Map<string, Loose>, from: readonly (readonly [string, number])[], most: number): number {
  let left = most;
  for (const [id, there] of from) {
    const known = pool.get(id) ?? { there, lent: 0 };
    const part = Math.max(0, Math.min(left, known.there - known.lent));
    pool.set(id, { ...known, lent: known.lent + part });
    left -= part;
  }
  return most - left;
}

function allotted({ each, free }: Takes): AllottedGoods {
  return {
    onHand: free + sum(each.map(({ kept }) => kept)),
    kept: byJob(each, ({ kept }) => kept),
    given: sum(each.map((take) => take.own + take.free)),
    coming: sum(each.map(({ coming }) => coming)),
    over: byJob(each, ({ kept, own }) => kept - own),
    lent: sum(each.map((take) => take.free + take.comingFree)),
  };
}

function byJob(takes: readonly Take[], of: (take: Take) => number): ReadonlyMap<string, number> {
  return new Map(takes.map((take) => [take.job, of(take)] as const).filter(([, amount]) => amount > NOTHING));
}

function sum(amounts: readonly number[]): number {
  return amounts.reduce((total, amount) => total + amount, 0);
}
