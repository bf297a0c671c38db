import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { needsOf, type NeedsList } from '#shared-calc/buy/needs.ts';
import { shoppingRun, type ShoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { NO_STOCK } from '#shared-calc/buy/stock.ts';
import type { PriceBook } from '#shared-calc/buy/price-book.ts';
import { csvText, harmless, type CsvCell } from '#shared-calc/papers/csv-text.ts';
import { needsCsv, packList } from '#shared-calc/papers/needs-csv.ts';
import { orderCsv } from '#shared-calc/papers/order-csv.ts';
import { quoteCsv } from '#shared-calc/papers/quote-csv.ts';
import { runCsv } from '#shared-calc/papers/run-csv.ts';
import type { SupplierOrder } from '#shared-calc/papers/supplier-orders.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { cleanNoise } from '#shared-calc/quantity/write-figure.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { demoPrices, threeTanks } from '#tests/shared-calc/buy/demo-goods.ts';
import { issued, libraryJob, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

/*
 * Every exported list, parsed by another library and compared with its source field by
 * field: no figure may lose a digit, no text may be lost or run as a formula.
 */

interface Locale {
  readonly says: string;
  readonly delimiter: string;
  readonly workshop: Workshop;
}

const house = workshopOf(demoRecords());
const locales: readonly Locale[] = [
  { says: 'a decimal point, cents', delimiter: ',', workshop: { ...house, currency: 'GBP' } },
  { says: 'a decimal comma, cents', delimiter: ';', workshop: { ...house, currency: 'EUR', decimalComma: true } },
  {
    says: 'a decimal point, no smaller coin',
    delimiter: ',',
    workshop: { ...house, currency: 'JPY', coinDecimals: 0 },
  },
  {
    says: 'a decimal comma, thousandths',
    delimiter: ';',
    workshop: { ...house, currency: 'TND', coinDecimals: 3, decimalComma: true },
  },
];

/** Texts that other programs might run, lose or show differently. */
const hostile = [
  '=HYPERLINK("http://evil.example","clay")',
  '+1+1',
  '-5 mm',
  '@SUM(A1)',
  '\t=1',
  '\r=1',
  '\n=1',
  'a\0=1',
  '\uff1d1',
  '\uff0b1',
  '\uff0d1',
  '\uff201',
  '"quoted" and, comma; semicolon',
  'two\nlines\r\nand three',
  '\u202e=gnp.exe',
  '\u200f=1',
  "'=1",
  '  =1',
  '1,5',
  '1;5',
  'Blähton 8–16 mm, 鉢',
] as const;

const records = withHostileNames();

describe.each(locales)('$says', ({ delimiter, workshop }) => {
  const read = (text: string): readonly (readonly string[])[] =>
    parse(text, { delimiter, record_delimiter: '\r\n', relax_column_count: false }) as string[][];
  const figure = (value: number) => String(cleanNoise(value)).replace('.', workshop.decimalComma ? ',' : '.');
  const money = (coins: number) => moneyBy(coins, workshop);

  test('a needs list', () => {
    const list = listOf();
    const [, ...rows] = read(needsCsv(list, workshop));
    expect(rows).toEqual([
      ...list.needs.map((need) => [
        harmless(need.material),
        harmless(need.label),
        need.group,
        figure(need.used),
        need.unit,
        figure(need.onHand),
        packList(need),
        money(need.costCoins),
        money(need.packsCoins),
        figure(need.leftOver),
      ]),
      ['total', '', '', '', '', '', '', money(list.totalCoins), money(list.packsTotalCoins), ''],
    ]);
  });

  test('a shopping run', () => {
    const run = runOf();
    const [, ...rows] = read(runCsv(run, workshop));
    const name = (id: string | undefined) => run.suppliers.find(({ supplier }) => supplier === id)?.name ?? '';
    expect(rows).toEqual([
      ...run.materials.map((need) => [
        harmless(name(need.supplier)),
        harmless(need.material),
        harmless(need.label),
        figure(need.used),
        need.unit,
        figure(need.onHand),
        packList(need),
        money(need.costCoins),
        money(need.aloneCoins),
        figure(need.leftOver),
      ]),
      ...run.suppliers.map((bill) => [
        harmless(bill.name),
        '',
        'carriage',
        '',
        '',
        '',
        '',
        money(bill.carriageCoins),
        '',
        '',
      ]),
      ['', '', 'goods', '', '', '', '', money(run.togetherCoins), money(run.aloneCoins), ''],
      ['', '', 'landed', '', '', '', '', money(run.landedTogetherCoins), money(run.landedAloneCoins), ''],
    ]);
  });

  test.each([true, false])('a quote, for the builder alone: %s', (inside) => {
    const quote = hostileQuote();
    const within = (...cells: readonly string[]) => (inside ? cells : []);
    const [head, ...rows] = read(quoteCsv(quote, workshop, { inside }));
    expect(head).toEqual(['item', 'price', 'tax class', ...within('cost', 'margin')]);
    expect(rows).toEqual([
      ...quote.lines.map((line) => [
        harmless(line.label),
        money(line.priceCoins),
        line.taxClass,
        ...within(money(line.costCoins), figure(line.margin)),
      ]),
      ['Before tax', money(quote.netCoins), '', ...within('', '')],
      ...quote.tax.map(({ coins, taxClass }) => ['Tax', money(coins), taxClass, ...within('', '')]),
      ['Price', money(quote.grossCoins), '', ...within('', '')],
      ['Deposit', money(quote.depositCoins), '', ...within('', '')],
    ]);
  });

  test('an order', () => {
    const order = hostileOrder();
    const sign = (text: string) => (workshop.decimalComma ? text.replace('.', ',') : text);
    const [, ...rows] = read(orderCsv(order, workshop));
    expect(rows).toEqual([
      ...order.rows.map(({ material, label, what, cost }) => [material, harmless(label), harmless(what), sign(cost)]),
      ['', 'goods', '', sign('159.60')],
      ['', 'carriage', '', sign('12.00')],
      ['', 'landed', '', sign('171.60')],
      ['', 'order by', '2027-03-16', ''],
      ['', 'expected', '2027-03-22', ''],
    ]);
  });

  test('whatever words, figures and amounts', () => {
    const words = fc.oneof(fc.constantFrom(...hostile), fc.string({ unit: 'grapheme' }), fc.string({ unit: 'binary' }));
    const figures = fc.double({ noNaN: true, noDefaultInfinity: true });
    const coins = fc.integer({ min: -1e12, max: 1e12 });
    const cell = fc.oneof(
      words.map((text) => ({ cell: text as CsvCell, reads: harmless(text) })),
      figures.map((value) => ({ cell: value as CsvCell, reads: signed(String(value), workshop) })),
      coins.map((value) => {
        const amount = moneyBy(value, { ...workshop, decimalComma: false });
        return { cell: { amount } as CsvCell, reads: signed(amount, workshop) };
      }),
    );
    const table = fc
      .integer({ min: 1, max: 5 })
      .chain((width) =>
        fc.array(fc.array(cell, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 6 }),
      )
      // A reader does not count a last line of one empty field.
      .filter((rows) => (rows[0]?.length ?? 0) > 1 || rows.at(-1)?.[0]?.reads !== '');
    fc.assert(
      fc.property(table, (rows) => {
        const text = csvText(
          rows.map((row) => row.map((each) => each.cell)),
          workshop,
        );
        expect(parse(text, { delimiter, record_delimiter: '\r\n', skip_empty_lines: false })).toEqual(
          rows.map((row) => row.map((each) => each.reads)),
        );
      }),
    );
  });
});

describe('harmless words', () => {
  test.each(hostile)('%j is readable, and nothing in it is run', (words) => {
    const safe = harmless(words);
    expect(safe.replace(/^'/, '').replaceAll('\u2400', '\0')).toBe(words.replace(/^'(?!=)/, ''));
    expect(/^[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20\u202e\u200f ]/.test(safe)).toBe(false);
    expect(safe).not.toContain('\0');
  });
});

/** Coins as text in the locale, built from the digits alone. */
function moneyBy(
  coins: number,
  { coinDecimals, decimalComma }: Pick<Workshop, 'coinDecimals' | 'decimalComma'>,
): string {
  const digits = String(Math.abs(coins)).padStart(coinDecimals + 1, '0');
  const whole = digits.slice(0, digits.length - coinDecimals);
  const part = digits.slice(digits.length - coinDecimals);
  const sign = coins < 0 ? '-' : '';
  return coinDecimals === 0 ? `${sign}${whole}` : `${sign}${whole}${decimalComma ? ',' : '.'}${part}`;
}

function signed(digits: string, { decimalComma }: Pick<Workshop, 'decimalComma'>): string {
  return decimalComma ? digits.replace('.', ',') : digits;
}

/** Every material and supplier under a hostile name. */
function withHostileNames(): PriceBook {
  const goods = [...demoPrices.goods.values()].map((each, at) => ({ ...each, label: nameAt(at) }));
  const suppliers = [...demoPrices.suppliers.values()].map((each, at) => ({ ...each, name: nameAt(at) }));
  return {
    on: demoPrices.on,
    goods: new Map(goods.map((each) => [each.material, each])),
    suppliers: new Map(suppliers.map((each) => [each.id, each])),
  };
}

function nameAt(at: number): string {
  return hostile[at % hostile.length] ?? '';
}

function listOf(): NeedsList {
  const list = needsOf(
    threeTanks.flatMap(({ needs }) => needs),
    { prices: records, stock: new Map([['M05', 6.25]]) },
  );
  if (!list.ok) throw new Error(JSON.stringify(list.fault));
  return list.value;
}

function runOf(): ShoppingRun {
  const run = shoppingRun(
    threeTanks.map((each) => ({ ...each, job: 'order' })),
    { prices: records, stock: NO_STOCK },
  );
  if (!run.ok) throw new Error(JSON.stringify(run.fault));
  return run.value;
}

/** A quote with a line of its own for each hostile name. */
function hostileQuote(): QuoteSums {
  const lines = hostile.map((label, at) => ({
    id: `L${at}`,
    job: 'J02',
    label,
    group: 'hardscape',
    costCoins: 1000 + at,
    by: 'us' as const,
  }));
  const { sums } = issued(withRecords(libraryJob(), 'quoteLine', lines), 'A').body;
  return sums;
}

function hostileOrder(): SupplierOrder {
  return {
    order: 'O-0001',
    supplier: 'S-greavel',
    name: 'Greavel Pane Cutters',
    on: '2027-03-08',
    jobs: 'J02',
    note: '',
    plantsByClass: '',
    rows: hostile.map((label, at) => ({ material: `M${at}`, label, what: label, cost: `${at}.05` })),
    goods: '159.60',
    carriage: '12.00',
    landed: '171.60',
    shortOfMinimum: '',
    arrivesOn: '2027-03-22',
    orderBy: { day: '2027-03-16', job: 'J02' },
  };
}
