import { storyActs } from '#electron/book/story-acts.ts';
import { runAct } from '#shared-calc/acts/act.ts';
import { actTable, type ActName } from '#shared-calc/acts/all-acts.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import { applyChange, type Change } from '#shared-calc/records/change.ts';
import type { Line, Order, Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { goods, lacks, perBuild, supplierOf, type Good, type Pencil } from './season-pencil.ts';

/** A book that acts are done in, day by day, and the pencil that follows it. */
export interface Season {
  book: Derived;
  readonly pencil: Pencil;
  readonly placed: PlacedOrder[];
}

/** An order as it was placed, beside what the pencil wanted. */
export interface PlacedOrder {
  readonly order: Order;
  readonly good: Good;
  readonly wanted: number;
}

/** The demo's house with plain figures for its needs, and two plants for the ground. */
export function openSeason(day: Day, pencil: Pencil): Season {
  const demo = demoRecords();
  const isLeft = (id: string) => ['P05', 'P07'].includes(id);
  const pack = new Map([...demo.pack].filter(([, { material }]) => !isLeft(material)));
  const records: Records = {
    ...demo,
    line: new Map([...demo.line].map(([id, line]) => [id, plainNeed(line)])),
    plant: new Map([...demo.plant].filter(([id]) => !isLeft(id))),
    pack,
    packPrice: new Map([...demo.packPrice].filter(([, price]) => pack.has(price.pack))),
  };
  return { book: derive(records, day), pencil, placed: [] };
}

function plainNeed(line: Line): Line {
  if (line.recipe !== 'H1' || line.role !== 'need') return line;
  const good = goods.find((each) => each === line.material);
  return { ...line, text: `${good ? perBuild[good] : 0} ${line.unit}` };
}

/** Does an act on a day; a refusal throws. */
export function act(season: Season, day: Day, name: ActName, input: object): void {
  season.book = season.book.update(season.book.records, day);
  apply(season, runAct(actTable[name], season.book, input));
}

function story(season: Season, name: string, input: object): void {
  const change = storyActs.get(name)?.(season.book, input);
  if (change) apply(season, change);
}

function apply(season: Season, change: Result<Change, unknown>): void {
  if (!change.ok) throw new Error(JSON.stringify(change.fault));
  season.book = season.book.update(applyChange(season.book.records, change.value));
}

/** A job from its enquiry to its deposit, on one day; its number. */
export function sell(season: Season, day: Day, builds: number): string {
  act(season, day, 'newJob', { title: `Season ${day}`, sizes: [{ tank: 'T07', count: builds }] });
  const job = [...season.book.records.job.keys()].at(-1) ?? '';
  issue(season, job);
  act(season, day, 'moveJob', { job, state: 'accepted' });
  story(season, 'payDeposit', { job });
  for (const good of goods) season.pencil.promised[good] += builds * perBuild[good];
  return job;
}

export function issue(season: Season, job: string): void {
  story(season, 'issue', { job });
}

/** Orders what jobs need, and writes down beside each order what the pencil wanted; the new orders by their good. */
export function place(season: Season, day: Day, jobs: readonly string[]): ReadonlyMap<Good, Order> {
  const { pencil } = season;
  const before = season.book.records.order;
  act(season, day, 'placeOrders', { jobs });
  const fresh = [...season.book.records.order.values()].filter(({ id }) => !before.has(id));
  const byGood = new Map<Good, Order>();
  for (const order of fresh) {
    const good = goods.find((each) => supplierOf[each] === order.supplier);
    if (!good) throw new Error(`nobody asked ${order.supplier}`);
    season.placed.push({ order, good, wanted: lacks(pencil, good) });
    byGood.set(good, order);
  }
  for (const [good, order] of byGood) {
    pencil.coming[good] += holds(order);
    pencil.ordered[good] += holds(order);
  }
  return byGood;
}

/** What the lines of an order hold together. */
export function holds({ lines }: Pick<Order, 'lines'>): number {
  return lines.reduce((sum, { count, amount }) => sum + count * amount, 0);
}

interface Receipt {
  readonly n: number;
  readonly count: number;
  readonly eachCoins?: number;
}

interface Delivery {
  readonly good: Good;
  readonly order: Order | undefined;
  readonly lines?: readonly Receipt[];
}

/** Takes in an order, all of it or some lines. */
export function receive(season: Season, day: Day, { good, order, lines }: Delivery): void {
  if (!order) throw new Error(`no order of ${good}`);
  act(season, day, 'receiveOrder', { order: order.id, ...(lines && { lines }) });
  const { pencil } = season;
  const receipts: readonly Receipt[] = lines ?? order.lines;
  for (const { n, count, eachCoins } of receipts) {
    const line = order.lines.find((each) => each.n === n);
    if (!line) throw new Error(`${order.id} has no line ${n}`);
    pencil.coming[good] -= count * line.amount;
    pencil.stands[good] += count * line.amount;
    pencil.came[good] += count * line.amount;
    pencil.paid += count * (eachCoins ?? line.askedCoins);
  }
}

/** Builds jobs, although this and that of their places is not known. */
export function build(season: Season, day: Day, jobs: readonly string[], builds: readonly number[]): void {
  for (const job of jobs) {
    act(season, day, 'moveJob', { job, state: 'built', anyway: 'nobody asked at the place', who: 'R-builder' });
  }
  const all = builds.reduce((sum, each) => sum + each, 0);
  for (const good of goods) {
    season.pencil.promised[good] -= all * perBuild[good];
    season.pencil.stands[good] -= all * perBuild[good];
  }
}
