import type { BoxCause } from '#shared-calc/bench/bench-types.ts';
import { withOwnLines } from '#shared-calc/bench/column-lines.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import type { Bench } from '#shared-calc/bench/open-bench.ts';
import type { Pricing } from '#shared-calc/bench/order-sums.ts';
import { oldPricesIn, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { Stock } from '#shared-calc/buy/stock.ts';
import type { Survey } from '#shared-calc/fields/survey.ts';
import { benchPlace, unseenPlace, type PlaceCheck } from '#shared-calc/jobs/place-checks.ts';
import { houseNow, type WorkingHouse } from '#shared-calc/jobs/working-house.ts';
import { derive, type Derived } from '#shared-calc/derive/derived.ts';
import type { Job, Line, Records, Workshop } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { sayBoxCause } from '#shared-calc/words/say-box-cause.ts';
import { readOrder, type Order } from './order-options.ts';
import type { Arguments } from './read-arguments.ts';
import { readDay } from './read-day.ts';
import { readStockFile } from './stock-file.ts';
import { today } from '#electron/service/today.ts';

/** A computed order: its bench, and what purchase and price are based on. */
export interface WorkedOrder {
  readonly derived: Derived;
  readonly order: Order;
  readonly bench: Bench;
  readonly pricing: Pricing;
  readonly house: WorkingHouse;
  readonly workshop: Workshop;
  /** The limits of the place for a size; without a job nothing was asked there. */
  readonly place: (column: string) => readonly PlaceCheck[];
}

/** Opens the bench of the order that the options define. Overrides from the command line must be valid. */
export function workOrder(given: Arguments, records: Records): Result<WorkedOrder, readonly string[]> {
  const on = readDay(given, 'on');
  const derived = derive(records, (on.ok ? on.value : undefined) ?? today());
  const order = readOrder(given, derived);
  if (!order.ok) return failed([order.fault]);
  if (!on.ok) return failed([on.fault]);
  const pricing = readPricing(given, derived, order.value);
  if (!pricing.ok) return failed([pricing.fault]);
  const bench = benchOf(order.value, pricing.value);
  if (!bench.ok) return bench;
  const place = placeOf(derived, order.value, bench.value);
  const { workshop } = derived;
  const rest = { bench: bench.value, pricing: pricing.value, house: houseOf(derived, order.value), workshop, place };
  return ok({ derived, order: order.value, ...rest });
}

function benchOf(order: Order, { prices }: Pricing): Result<Bench, readonly string[]> {
  const { job, written } = order;
  const { lines, columns } = withOwnLines(order.lines, order.columns);
  const unknown = unknownLines(
    written.map(({ line }) => line),
    lines,
  );
  if (unknown.length > 0) return failed(unknown);
  const bench = onceBench({ lines, columns, job, isOldPrice: oldPricesIn(prices) });
  const refused = [...absentWrites(order, bench), ...refusedWrites(order, bench)];
  return refused.length > 0 ? failed(refused) : ok(bench);
}

function houseOf({ records, job }: Derived, { jobId, recipe, columns }: Order): WorkingHouse {
  const recipes = columns.map((column) => column.recipe ?? recipe);
  return job(jobId ?? '')?.house ?? houseNow(records, recipe, recipes);
}

/** Every size of the order stands at the place, also one that is left out of the answer. */
function placeOf(
  { records, display }: Derived,
  { lines, columns, beside, jobId }: Order,
  bench: Bench,
): WorkedOrder['place'] {
  const at = records.job.get(jobId ?? '') ?? unseenPlace;
  const whole =
    beside.length === 0 ? bench : onceBench({ ...bench.input(), ...withOwnLines(lines, [...columns, ...beside]) });
  return benchPlace(whole, at, display);
}

/** What was asked where the job's tanks are to stand; nothing for an order without a job. */
export function surveyOf({ derived: { records }, order }: WorkedOrder): Survey | undefined {
  return records.job.get(order.jobId ?? '')?.survey;
}

/** A sold job is priced as it was sold, unless today's prices are asked for. */
function readPricing(given: Arguments, derived: Derived, order: Order): Result<Pricing, string> {
  const usual: Pricing = derived.job(order.jobId ?? '')?.pricing ?? {
    prices: derived.prices,
    rules: derived.rules,
    basis: 'used',
  };
  const { prices = usual.prices, wrong } = askedPrices(given, derived);
  if (wrong !== undefined) return failed(wrong);
  const basis = given.text('basis') ?? usual.basis;
  if (!isBasis(basis)) return failed(`--basis ${basis}: choose used or packs.`);
  const buying = readBuying(given, derived.records, prices);
  if (!buying.ok) return buying;
  const { rules, oneOffs } = usual;
  return ok({ prices, rules, basis, ...buying.value, ...(oneOffs && { oneOffs }) });
}

function askedPrices(given: Arguments, { prices }: Derived): { readonly prices?: PriceBook; readonly wrong?: string } {
  const asked = given.text('prices');
  if (asked === undefined) return {};
  return asked === 'today' ? { prices } : { wrong: `--prices ${asked}: say today, or leave it out.` };
}

function readBuying(
  given: Arguments,
  records: Records,
  prices: PriceBook,
): Result<Pick<Pricing, 'stock' | 'materials'>, string> {
  const materials = readMaterials(given, prices.goods);
  if (!materials.ok) return materials;
  const stock = readStock(given, records);
  if (!stock.ok) return stock;
  return ok({ stock: stock.value, ...(materials.value && { materials: materials.value }) });
}

function isBasis(word: string): word is Job['basis'] {
  return word === 'used' || word === 'packs';
}

function readMaterials(
  given: Arguments,
  goods: ReadonlyMap<string, unknown>,
): Result<readonly string[] | undefined, string> {
  const materials = given
    .text('materials')
    ?.split(',')
    .map((each) => each.trim());
  const unknown = materials?.find((each) => !goods.has(each));
  if (unknown === undefined) return ok(materials);
  return failed(`No material called ${unknown}.${didYouMean(unknown, goods.keys())}`);
}

function readStock(given: Arguments, records: Records): Result<Stock, string> {
  const file = given.text('stock');
  return file === undefined ? ok(new Map()) : readStockFile(file, records);
}

/** A sentence for each name that matches no line. */
export function unknownLines(names: readonly string[], lines: readonly Line[]): readonly string[] {
  const known = lines.map((line) => line.name);
  const unknown = names.filter((name) => !known.includes(name));
  return [...new Set(unknown)].map((name) => `Nothing called ${name}.${didYouMean(name, known)}`);
}

/** Sentences for overrides of lines that the recipe of their size does not have. */
function absentWrites({ written, columns, recipe: usual }: Order, bench: Bench): readonly string[] {
  return written.flatMap(({ column, line }) => {
    if (column === undefined || bench.box(column, line).state !== 'not in this recipe') return [];
    const { recipe = usual } = columns.find(({ key }) => key === column) ?? {};
    return [`${column}.${line}: not in recipe ${recipe}, which ${column} is built by.`];
  });
}

/**
 * Sentences for overrides from the command line that cannot be parsed, and for cycles they make. A cycle is named once.
 */
function refusedWrites(order: Order, bench: Bench): readonly string[] {
  const says = new Map<string, string>();
  for (const { column, line } of order.written) {
    const keys = column === undefined ? order.columns.map((each) => each.key) : [column];
    for (const key of keys) {
      const { cause, text } = bench.box(key, line);
      if (cause?.why !== 'faulty' && cause?.why !== 'loop') continue;
      const sentence = `${line}=${text}: ${sayBoxCause(cause, line)}${sayPlace(cause)}`;
      const fact = cause.why === 'loop' ? cause.cycle.toSorted().join(' ') : sentence;
      if (!says.has(fact)) says.set(fact, sentence);
    }
  }
  return [...says.values()];
}

/** The first character at fault, counted from 1. */
function sayPlace(cause: BoxCause): string {
  const at = cause.why === 'faulty' && cause.fault.kind === 'rule' ? cause.fault.faults[0]?.from : undefined;
  return at === undefined ? '' : ` (at ${at + 1})`;
}
