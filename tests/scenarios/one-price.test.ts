import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import type { Book } from '#electron/book/book.ts';
import { openBook } from '#electron/book/open-book.ts';
import { benchCommand } from '#electron/cli/commands/bench.ts';
import { quoteCommand } from '#electron/cli/commands/quote.ts';
import type { Command } from '#electron/cli/command.ts';
import { readArguments } from '#electron/cli/read-arguments.ts';
import type { FootId } from '#renderer/bench/view-model.ts';
import { moneyBarsSpec } from '#renderer/curves/money-bars-spec.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import { draftQuote } from '#shared-calc/derive/draft-quote.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { readQuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { Job, QuoteLine, Records, Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { workedJob } from '#tests/worked-job.ts';
import { useDemoBook } from '#tests/electron/cli/run-cli.ts';
import { benchAtHand } from '#tests/renderer/store/book-at-hand.ts';
import { jobOf, valueOf, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

/*
 * One price everywhere: at the foot of the bench, by the command line as data and as text, in the
 * draft on the page, and in the body of the issued quote.
 */

interface Price {
  readonly hours: number;
  readonly cost: string;
  readonly net: string;
  readonly tax: string;
  readonly gross: string;
  readonly deposit: string;
}

/** Values for one job alone, and the house figures that start at 0. */
interface Terms {
  readonly oneOffs: readonly Pick<QuoteLine, 'label' | 'group' | 'costCoins' | 'by'>[];
  readonly basis: Job['basis'];
  readonly house: Partial<Workshop>;
}

const reserved: Partial<Workshop> = { contingencyShare: 0.05, warrantyShare: 0.02, plantLossShare: 0.1 };
const cases: Readonly<Record<string, Terms>> = {
  'as the demo has it': { oneOffs: [], basis: 'used', house: {} },
  'with lines of its own, reserves and a discount': {
    oneOffs: [
      { label: 'Waterfall kit', group: 'mist', costCoins: 12_000, by: 'client' },
      { label: 'Old panel given back', group: 'hardscape', costCoins: -1_250, by: 'us' },
    ],
    basis: 'used',
    house: { ...reserved, discountShare: 0.075 },
  },
  'by whole packs, in steps of 10': {
    oneOffs: [{ label: 'Orchids', group: 'plants', costCoins: 7_777, by: 'client' }],
    basis: 'packs',
    house: { ...reserved, priceStepCoins: 1_000 },
  },
};

const share = fc.integer({ min: 0, max: 25 }).map((percent) => percent / 100);
const terms: fc.Arbitrary<Terms> = fc.record({
  oneOffs: fc.array(
    fc.record({
      label: fc.constantFrom('Kit', 'Stand', 'Return'),
      group: fc.constantFrom('tank', 'media', 'hardscape', 'plants', 'mist', 'work'),
      costCoins: fc.integer({ min: -2_000, max: 90_000 }),
      by: fc.constantFrom('client', 'us'),
    }),
    { minLength: 1, maxLength: 3 },
  ),
  basis: fc.constantFrom('used', 'packs'),
  house: fc.record({
    contingencyShare: share,
    warrantyShare: share,
    plantLossShare: share,
    discountShare: share,
    priceStepCoins: fc.constantFrom(0, 50, 1_000),
  }),
});

const { book: file } = useDemoBook(DEMO_DAY);
let book: Book;
let demo: Records;

beforeAll(() => {
  book = valueOf(openBook(file(), { today: DEMO_DAY, backups: false }));
  demo = book.records();
});
afterAll(() => book.close());

describe.each(Object.entries(cases))('%s', (_, given) => {
  test('every job of the demo, and each of its sizes alone, has one price', async () => {
    const { told, wanted } = await pricesBy(given);
    expect(told).toEqual(wanted);
  });
});

test('with any lines of its own, reserves and discount it has one price', async () => {
  await fc.assert(
    fc.asyncProperty(terms, fc.nat(), async (given, at) => {
      const { told, wanted } = await pricesBy(given, at);
      expect(told).toEqual(wanted);
    }),
    { numRuns: 2 },
  );
});

test('lines of its own are in the price at the foot of the bench', async () => {
  const foot = async (given: Terms | undefined) => (await feet(put(given ?? plain), 'J01'))['T07'];
  const without = await foot(undefined);
  const kit = await foot({ ...plain, oneOffs: [{ label: 'Kit', group: 'mist', costCoins: 12_000, by: 'us' }] });
  // 120.00 over 1 - 30 % is 171.43.
  expect([Number(kit?.cost) - Number(without?.cost), Number(kit?.net) - Number(without?.net)]).toEqual([
    expect.closeTo(120, 6),
    expect.closeTo(171.43, 6),
  ]);
});

const plain: Terms = { oneOffs: [], basis: 'used', house: {} };

/** Every job whole, and each of its sizes as a job of its own; of random ones, the size at a place. */
async function pricesBy(given: Terms, at?: number) {
  const records = put(given);
  const pairs: (readonly [told: unknown, wanted: unknown])[] = [];
  for (const { id } of demo.job.values()) {
    const ofSizes = await feet(records, id);
    pairs.push([await benchSums(id), { json: ofSizes, text: ofSizes }]);
    const sizes = Object.entries(ofSizes);
    for (const [key, price] of at === undefined ? sizes : sizes.slice(at % sizes.length).slice(0, 1)) {
      const own = alone(id, key);
      pairs.push([await quoted(records, own), same(price, given)]);
    }
    const whole = await quoted(records, id);
    pairs.push([whole, same(whole.json, given)]);
  }
  return { told: pairs.map(([told]) => told), wanted: pairs.map(([, wanted]) => wanted) };
}

function same(price: Price, { oneOffs }: Terms) {
  const ways = { json: price, text: price, draft: price, issued: price, bars: [price.net, price.cost] };
  return { ...ways, oneOffs: oneOffs.length };
}

/** The book with the terms on every job of the demo and, beside it, on each of its sizes as a job of its own. */
function put({ oneOffs, basis, house }: Terms): Records {
  const priced = withRecords(demo, 'workshop', [{ ...workshopOf(demo), ...house }]);
  const withAlone = [...demo.job.values()].reduce(sizesAlone, priced);
  const jobs = [...withAlone.job.values()];
  const lines = jobs.flatMap(({ id }) => oneOffs.map((line, at) => ({ ...line, id: `${id}-line-${at}`, job: id })));
  const before = book.records();
  const next = {
    ...withRecords(
      withAlone,
      'job',
      jobs.map((job) => ({ ...job, basis })),
    ),
    quoteLine: new Map(lines.map((line) => [line.id, line])),
    issuedQuote: before.issuedQuote,
  };
  valueOf(book.apply(diffRecords('other terms', before, next), book.revision()));
  return book.records();
}

function alone(job: string, key: string): string {
  return `${job}-alone-${key.replace('#', '-')}`;
}

function sizesAlone(records: Records, job: Job): Records {
  return workedJob(records, job, DEMO_DAY).sheet.columns.reduce((before, { size: id, key }) => {
    const size = before.size.get(id);
    if (!size) throw new Error(`no size ${id}`);
    const own = alone(job.id, key);
    const locals = [...before.localValue.values()]
      .filter((value) => value.job === job.id && (value.size === undefined || value.size === id))
      .map((value) => ({ ...value, id: `${own}-${value.id}`, job: own, ...(value.size && { size: own }) }));
    const withJob = withRecords(before, 'job', [{ ...job, id: own }]);
    return withRecords(withRecords(withJob, 'size', [{ ...size, id: own, job: own }]), 'localValue', locals);
  }, records);
}

const footIds = ['hours', 'cost', 'net', 'tax', 'gross', 'deposit'] as const satisfies readonly FootId[];

/** The totals below each strip of the bench on the page. */
async function feet(records: Records, job: string): Promise<Readonly<Record<string, Price>>> {
  const { bench } = await benchAtHand(records);
  bench.open(job);
  const { columns, footOf } = bench.view.peek();
  const price = (key: string) => priceOf(footIds.map((id) => footOf(id, key).copied));
  const all = Object.fromEntries(columns.map(({ key }) => [key, price(key)]));
  bench.close();
  return all;
}

function priceOf([hours = '', cost = '', net = '', tax = '', gross = '', deposit = '']: readonly string[]): Price {
  return { hours: Number(hours), cost, net, tax, gross, deposit };
}

const Money = z.string();
const Sums = z.object({ hours: z.number(), cost: Money, net: Money, tax: Money, gross: Money, deposit: Money });
const BenchJson = z.object({ columns: z.array(z.object({ size: z.string(), sums: Sums })) });
const QuoteJson = z.object({
  ...Sums.shape,
  tax: z.record(z.string(), Money),
  lines: z.array(z.object({ cost: Money, price: Money })),
});

async function benchSums(job: string) {
  const { json, text } = await ask(benchCommand, '--job', job, '--on', DEMO_DAY);
  const { columns } = BenchJson.parse(json);
  const [, , ...rows] = text.slice(text.indexOf('\nSUMS')).trim().split('\n').map(cellsOf);
  const column = (at: number) => priceOf(rows.slice(0, footIds.length).map((cells) => cells.at(at) ?? ''));
  return {
    json: Object.fromEntries(columns.map(({ size, sums }) => [size, sums])),
    text: Object.fromEntries(columns.map(({ size }, at) => [size, column(at - columns.length)])),
  };
}

function cellsOf(row: string): readonly string[] {
  return row.trim().split(/\s{2,}/);
}

/** The issued quote of a job, in each of its forms. */
async function quoted(records: Records, job: string) {
  const { body: draft } = valueOf(
    draftQuote(derive(records, DEMO_DAY), workedJob(records, jobOf(records, job), DEMO_DAY)),
  );
  const { json, text } = await ask(quoteCommand, '--job', job, '--on', DEMO_DAY, '--issue');
  const { tax, lines, ...sums } = QuoteJson.parse(json);
  const body = readQuoteBody(latestQuote(book.records(), job)?.body ?? '');
  if (!body) throw new Error(`no quote of ${job} was issued`);
  const bars = moneyBarsSpec(draft.sums, { currency: 'cr', decimalComma: false, money });
  const added = [lines.map(({ price }) => price), lines.map(({ cost }) => cost)].map((each) =>
    sumOf(each.map(coinsOf)),
  );
  expect(added).toEqual([sums.net, sums.cost].map(coinsOf));
  return {
    json: { ...sums, tax: money(sumOf(Object.values(tax).map(coinsOf))) },
    text: priceInText(text),
    draft: priceOfSums(draft.sums),
    issued: priceOfSums(body.sums),
    bars: (/^(\S+) cr before tax, of which (\S+) is cost$/.exec(bars?.under ?? '') ?? []).slice(1),
    oneOffs: body.oneOffs.length,
  };
}

function priceInText(text: string): Price {
  const found = (pattern: RegExp) => [...text.matchAll(pattern)].map(([, figure = '']) => figure);
  const costs = [...text.matchAll(/ (-?\d+\.\d\d) +[\d.-]+ % /g)].map(([, cost = '']) => coinsOf(cost));
  const [, gross = '', deposit = '', hours = ''] = /^price (\S+) \S+, deposit (\S+), (\S+) h$/m.exec(text) ?? [];
  return {
    hours: Number(hours),
    cost: money(sumOf(costs)),
    net: found(/^before tax (\S+)$/gm).join(),
    tax: money(sumOf(found(/^tax, .+ (\S+)$/gm).map(coinsOf))),
    gross,
    deposit,
  };
}

function priceOfSums({ hours, costCoins, netCoins, grossCoins, depositCoins }: QuoteSums): Price {
  const [cost, net, tax, gross, deposit] = [costCoins, netCoins, grossCoins - netCoins, grossCoins, depositCoins].map(
    money,
  );
  return priceOf([String(hours), cost, net, tax, gross, deposit].map((each) => each ?? ''));
}

function money(coins: number): string {
  return (coins / 100).toFixed(2);
}

function coinsOf(text: string): number {
  return Math.round(Number(text) * 100);
}

function sumOf(coins: readonly number[]): number {
  return coins.reduce((sum, each) => sum + each, 0);
}

/** One answer of the command line, as data and as text. */
async function ask(command: Command, ...argv: readonly string[]) {
  const given = valueOf(readArguments([...argv, '--book', file()], command.options));
  const outcome = await command.run(given);
  if (outcome.is !== 'answer') throw new Error(JSON.stringify(outcome));
  return { json: outcome.json, text: outcome.table() };
}
