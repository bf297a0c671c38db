import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { plantClasses, plantNeedUses } from '#shared-calc/fields/plant.ts';
import { allLines } from '#shared-calc/recipe/lines-of.ts';
import type { RecipeTables } from '#shared-calc/recipe/whole-recipe.ts';
import { memos } from '#shared-calc/records/memo.ts';
import type { Move, Order, Plant, Records } from '#shared-calc/records/records.ts';

/** An amount below this counts as zero: binary noise. */
export const NOTHING = 1e-9;

/** Days that plants are kept apart unless another count is given. Common practice, no source. */
export const QUARANTINE_DAYS = 30;

/** Goods that one `in` brought, with every move of them, in order of day. */
export interface Lot {
  readonly id: string;
  /** A material, a tank, a plant or a one-off line. */
  readonly of: string;
  readonly came: Move;
  readonly moves: readonly Move[];
}

/** The day a question is asked, and the day on which the goods are used. */
export interface LedgerDays {
  readonly asked: Day;
  /** Left out: the day asked. */
  readonly use?: Day | undefined;
}

/** A lot on the days of a question; amounts in the unit of its goods. */
export interface LotStock {
  readonly lot: Lot;
  /** What stands in it. */
  readonly amount: number;
  /** Out of quarantine and not past its best on the day of use. */
  readonly usable: boolean;
  readonly quarantined: boolean;
  readonly opened: boolean;
  readonly kept: ReadonlyMap<string, number>;
  /** Kept for nobody. */
  readonly loose: number;
}

/** What is still to come of a line of an open order. */
export interface ComingLine {
  readonly order: string;
  readonly line: Order['lines'][number];
  readonly open: number;
  /** The day on which it can be used: due, and out of quarantine. */
  readonly clearOn: Day;
  readonly kept: ReadonlyMap<string, number>;
  readonly loose: number;
}

/** What there is of goods. */
export interface GoodsStock {
  readonly onHand: number;
  /** Usable on the day of use, and kept for nobody. */
  readonly free: number;
  /** In quarantine on the day asked. */
  readonly quarantined: number;
  /** By job, of what is usable on the day of use. */
  readonly kept: ReadonlyMap<string, number>;
  readonly onOrder: number;
  /** What comes by the day of use, by job. */
  readonly coming: ReadonlyMap<string, number>;
  /** What comes by the day of use for no job. */
  readonly comingFree: number;
  readonly lots: readonly LotStock[];
  readonly lines: readonly ComingLine[];
}

export type LedgerRecords = RecipeTables & Pick<Records, 'move' | 'order' | 'plant'>;

/**
 * What there is of goods, asked on one day and used on another. A class of plants, which is a material of its own, is
 * met by plants of that class as well.
 */
export function stock(records: LedgerRecords, goods: string, days: LedgerDays): GoodsStock {
  return stockOf(records, membersOf(records, goods), days);
}

/** What there is of goods alone, without what else may be used for them. */
export function stockOf(records: LedgerRecords, members: readonly string[], days: LedgerDays): GoodsStock {
  const { asked, use = asked } = days;
  const index = indexOf(records.move);
  const lots = members
    .flatMap((of) => index.byGoods.get(of) ?? [])
    .map((lot) => lotOn(lot, { asked, use }))
    .filter(({ amount }) => Math.abs(amount) > NOTHING);
  const lines = comingOf(records, new Set(members), asked);
  const usable = lots.filter((each) => each.usable);
  const inTime = lines.filter(({ clearOn }) => clearOn <= use);
  return {
    onHand: sumOf(lots, ({ amount }) => amount),
    free: sumOf(usable, ({ loose }) => loose),
    quarantined: sumOf(
      lots.filter((each) => each.quarantined),
      ({ amount }) => amount,
    ),
    kept: byJob(usable),
    onOrder: sumOf(lines, ({ open }) => open),
    coming: byJob(inTime),
    comingFree: sumOf(inTime, ({ loose }) => loose),
    lots,
    lines,
  };
}

/** All goods that have a lot or an order, in order of their codes. */
export function goodsInLedger({ move, order }: Pick<Records, 'move' | 'order'>): readonly string[] {
  const ordered = [...order.values()].flatMap(({ lines }) => lines.map(({ of }) => of));
  return [...new Set([...indexOf(move).byGoods.keys(), ...ordered])].toSorted();
}

export function lotsOf({ move }: Pick<Records, 'move'>, goods: string): readonly Lot[] {
  return indexOf(move).byGoods.get(goods) ?? [];
}

/** Moves of a line of an order, in order of day. */
export function movesOfLine({ move }: Pick<Records, 'move'>, order: string, n: number): readonly Move[] {
  return indexOf(move).byLine.get(lineKey(order, n)) ?? [];
}

/** What stands in a lot at the end of a day. */
export function balance({ moves }: Pick<Lot, 'moves'>, day: Day): number {
  let stands = 0;
  for (const { on, what, amount } of moves) if (on <= day && what !== 'kept') stands += amount;
  return Math.abs(stands) < NOTHING ? 0 : stands;
}

/** What is kept of a lot for a job at the end of a day. */
export function kept(lot: Pick<Lot, 'moves'>, job: string, day: Day): number {
  return keptIn(lot, day).get(job) ?? 0;
}

/**
 * What is kept of a lot, by job: what was kept less what the job took of it, never below 0. Where less stands than is
 * kept, the job for which it was kept first has it.
 */
export function keptIn(lot: Pick<Lot, 'moves'>, day: Day): ReadonlyMap<string, number> {
  const asked = new Map<string, number>();
  for (const { on, what, amount, job } of lot.moves) {
    if (on > day || job === undefined || !(what === 'kept' || amount < 0)) continue;
    asked.set(job, Math.max(0, (asked.get(job) ?? 0) + amount));
  }
  return capped(asked, balance(lot, day));
}

/** The goods that a need is met by: themselves, and for a class of plants the plants of that class. */
export function membersOf(records: RecipeTables & Pick<Records, 'plant'>, goods: string): readonly string[] {
  const { plant } = records;
  const classes = classMaterials(records).get(goods) ?? [];
  if (classes.length === 0) return [goods];
  return [goods, ...[...plant.values()].filter((each) => classes.includes(each.class)).map(({ id }) => id)];
}

/** Whether goods are plants, which stand apart after they come: by species, or as a class. */
export function isPlantGoods(records: RecipeTables & Pick<Records, 'plant'>, goods: string): boolean {
  return records.plant.has(goods) || classMaterials(records).has(goods);
}

const classCache = memos<ReadonlyMap<string, readonly Plant['class'][]>>();

/** The classes of plants that a material stands for: recipes ask for it through the need line of the class. */
function classMaterials(records: RecipeTables): ReadonlyMap<string, readonly Plant['class'][]> {
  const { recipe, line, difference } = records;
  return classCache('classes', [recipe, line, difference], () => {
    const classes = new Map<string, readonly Plant['class'][]>();
    for (const { use, material } of allLines(records)) {
      const of = plantClasses.find((each) => plantNeedUses[each] === use);
      if (of === undefined || material === undefined) continue;
      const before = classes.get(material) ?? [];
      if (!before.includes(of)) classes.set(material, [...before, of]);
    }
    return classes;
  });
}

interface LedgerIndex {
  readonly byGoods: ReadonlyMap<string, readonly Lot[]>;
  /** Moves that came of an order, by order and line. */
  readonly byLine: ReadonlyMap<string, readonly Move[]>;
}

const indexes = new WeakMap<Records['move'], LedgerIndex>();

function indexOf(move: Records['move']): LedgerIndex {
  const known = indexes.get(move) ?? indexMoves(move);
  indexes.set(move, known);
  return known;
}

function indexMoves(move: Records['move']): LedgerIndex {
  const all = [...move.values()].toSorted(inOrder);
  const byLot = Map.groupBy(all, ({ lot }) => lot);
  const lots = all
    .filter(({ what }) => what === 'in')
    .map((came): Lot => ({ id: came.lot, of: came.of, came, moves: byLot.get(came.lot) ?? [] }));
  const ordered = all.filter(({ order }) => order !== undefined);
  return {
    byGoods: Map.groupBy(lots, ({ of }) => of),
    byLine: Map.groupBy(ordered, ({ order = '', line = 0 }) => lineKey(order, line)),
  };
}

function lineKey(order: string, n: number): string {
  return `${order}\n${n}`;
}

/** By day; on a day what comes in before what is kept, and that before what goes out. */
function inOrder(one: Move, other: Move): number {
  return compare(one.on, other.on) || rankOf(one) - rankOf(other) || compare(one.id, other.id);
}

function rankOf({ what, amount }: Move): number {
  if (what === 'in') return 0;
  return amount > 0 ? 1 : 2;
}

function compare(one: string, other: string): number {
  return one < other ? -1 : Number(one > other);
}

function lotOn(lot: Lot, { asked, use }: Required<LedgerDays> & { readonly use: Day }): LotStock {
  const { until = '', bestBefore = '9999-12-31' } = lot.came;
  const amount = balance(lot, asked);
  const keptNow = keptIn(lot, asked);
  return {
    lot,
    amount,
    usable: until <= use && bestBefore >= use,
    quarantined: until > asked,
    opened: isOpened(lot, asked),
    kept: keptNow,
    loose: Math.max(0, amount - sumOf([...keptNow.values()], (each) => each)),
  };
}

/** A lot that came open, or of which something was taken. */
export function isOpened({ came, moves }: Pick<Lot, 'came' | 'moves'>, day: Day): boolean {
  return came.sealed === false || moves.some(({ on, what, amount }) => on <= day && what !== 'kept' && amount < 0);
}

function comingOf(records: LedgerRecords, members: ReadonlySet<string>, asked: Day): readonly ComingLine[] {
  const open = [...records.order.values()].filter(({ on, closedOn = '9999-12-31' }) => on <= asked && closedOn > asked);
  return open.flatMap((order) =>
    order.lines
      .filter(({ of }) => members.has(of))
      .map((line) => comingLine(records, { order: order.id, line, asked }))
      .filter((each) => each.open > NOTHING),
  );
}

interface AskedLine {
  readonly order: string;
  readonly line: Order['lines'][number];
  readonly asked: Day;
}

function comingLine(records: LedgerRecords, { order, line, asked }: AskedLine): ComingLine {
  const came = movesOfLine(records, order, line.n).filter(({ on }) => on <= asked);
  const sum = (what: Move['what'], job?: string) =>
    sumOf(
      came.filter((each) => each.what === what && (job === undefined || each.job === job)),
      ({ amount }) => amount,
    );
  const open = Math.max(0, line.count * line.amount - sum('in'));
  const wanted = new Map<string, number>();
  for (const { job, amount } of line.for) wanted.set(job, (wanted.get(job) ?? 0) + amount);
  const left = new Map([...wanted].map(([job, amount]) => [job, amount - sum('kept', job)]));
  const forJobs = capped(left, open);
  return {
    order,
    line,
    open,
    clearOn: isPlantGoods(records, line.of) ? addDays(line.due, QUARANTINE_DAYS) : line.due,
    kept: forJobs,
    loose: Math.max(0, open - sumOf([...forJobs.values()], (each) => each)),
  };
}

/** Amounts by job, in their order at most what there is; none of nothing. */
function capped(amounts: ReadonlyMap<string, number>, most: number): ReadonlyMap<string, number> {
  const given = new Map<string, number>();
  let left = most;
  for (const [job, amount] of amounts) {
    const part = Math.min(amount, left);
    if (part <= NOTHING) continue;
    given.set(job, part);
    left -= part;
  }
  return given;
}

function byJob(parts: readonly Pick<LotStock, 'kept'>[]): ReadonlyMap<string, number> {
  const sums = new Map<string, number>();
  for (const { kept: jobs } of parts) for (const [job, amount] of jobs) sums.set(job, (sums.get(job) ?? 0) + amount);
  return sums;
}

function sumOf<T>(all: readonly T[], of: (each: T) => number): number {
  const sum = all.reduce((total, each) => total + of(each), 0);
  return Math.abs(sum) < NOTHING ? 0 : sum;
}
