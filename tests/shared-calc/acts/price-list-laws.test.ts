import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlacedList } from '#shared-calc/acts/place-list-rows.ts';
import { takenRow, takePriceList } from '#shared-calc/acts/take-price-list.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import type { PriceListMap } from '#shared-calc/fields/price-list-map.ts';
import { listedPrices, priceListCsv } from '#shared-calc/papers/price-list-csv.ts';
import { encodingOf } from '#shared-calc/read/text-encoding.ts';
import { isEmptyChange } from '#shared-calc/records/change.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { inBook, left, place, SUPPLIER, taken } from './placed-list.ts';

const records = demoRecords();

interface Price {
  readonly pack: string;
  readonly coins: number;
  readonly day: string;
}

const sold = [...records.pack.values()].filter(({ supplier }) => supplier === SUPPLIER);
const day = fc
  .record({ month: fc.integer({ min: 1, max: 12 }), of: fc.integer({ min: 1, max: 28 }) })
  .map(({ month, of }) => `2028-${String(month).padStart(2, '0')}-${String(of).padStart(2, '0')}`);
const prices: fc.Arbitrary<readonly Price[]> = fc.uniqueArray(
  fc.record({ pack: fc.constantFrom(...sold.map(({ id }) => id)), coins: fc.integer({ min: 1, max: 9_999_999 }), day }),
  { minLength: 1, maxLength: 12, selector: ({ pack, day: from }) => `${pack} ${from}` },
);

const dialects = fc.record({
  delimiter: fc.constantFrom(';', ',', '\t', '|'),
  decimal: fc.constantFrom('.' as const, ',' as const),
  mark: fc.constantFrom('', "'", ' ', 'other'),
  dates: fc.constantFrom('ymd' as const, 'dmy' as const, 'mdy' as const),
  sign: fc.constantFrom('-', '/', '.'),
  money: fc.constantFrom(
    (text: string) => text,
    (text: string) => `$${text}`,
    (text: string) => `${text} €`,
  ),
  end: fc.constantFrom('\n', '\r\n', '\r'),
  titles: fc.constantFrom('', 'Spring list', 'Spring, 2028; all prices'),
  bytes: fc.constantFrom(
    (text: string) => Buffer.from(text, 'utf8'),
    (text: string) => Buffer.from(`\ufeff${text}`, 'utf8'),
    (text: string) => Buffer.from(text, 'utf16le'),
    (text: string) => Buffer.from(`\ufeff${text}`, 'utf16le'),
    (text: string) => Buffer.from(text, 'utf16le').swap16(),
    (text: string) => Buffer.from(text.replaceAll('€', 'EUR'), 'latin1'),
  ),
});
type Dialect = typeof dialects extends fc.Arbitrary<infer D> ? D : never;

const numbers = new Map(sold.map(({ id }, at) => [id, `N-${at}`]));
const numbered = Object.fromEntries(sold.map(({ id, material }) => [numbers.get(id) ?? '', material]));
const listed: PriceListMap = {
  columns: { article: 'No', label: 'Item', pack: 'Pack', unit: 'Unit', price: 'Price', from: 'From' },
  articles: numbered,
};
const plain: Dialect = {
  delimiter: ';',
  decimal: '.',
  mark: '',
  dates: 'ymd',
  sign: '-',
  money: (text) => text,
  end: '\n',
  titles: '',
  bytes: (text) => Buffer.from(text, 'utf8'),
};

function written(rows: readonly Price[], dialect: Dialect): string {
  const { delimiter, decimal, dates, sign, money, end, titles } = dialect;
  const cell = (text: string) => (text.includes(delimiter) ? `"${text}"` : text);
  const body = rows.map(({ pack: id, coins, day: from }) => {
    const pack = records.pack.get(id);
    const unit = records.material.get(pack?.material ?? '')?.unit ?? '';
    const [year = '', month = '', of = ''] = from.split('-');
    const parts = { ymd: [year, month, of], dmy: [of, month, year], mdy: [month, of, year] }[dates];
    const price = money(amountIn(coins, dialect));
    const amount = String(pack?.amount).replace('.', decimal);
    return [numbers.get(id) ?? '', 'bark, fine; bagged', amount, unit.toUpperCase(), price, parts.join(sign)]
      .map(cell)
      .join(delimiter);
  });
  const heading = ['No', 'Item', 'Pack', 'Unit', 'Price', 'From'].join(delimiter);
  return [...(titles === '' ? [] : [titles, '']), heading, ...body, ''].join(end);
}

function amountIn(coins: number, { decimal, mark }: Dialect): string {
  const [whole = '', part = ''] = (coins / 100).toFixed(2).split('.');
  const thousands = mark === 'other' ? (decimal === '.' ? ',' : '.') : mark;
  return `${whole.replaceAll(/\B(?=(\d{3})+$)/g, thousands)}${decimal}${part}`;
}

function decoded(bytes: Uint8Array): string {
  const encoding = encodingOf(bytes);
  if (!encoding.ok) throw new Error(encoding.fault.kind);
  return new TextDecoder(encoding.value).decode(bytes);
}

describe('a price list', () => {
  test('says the same in any dialect as in the plain one', () => {
    fc.assert(
      fc.property(prices, dialects, (rows, dialect) => {
        const { decimal, dates } = dialect;
        const text = decoded(dialect.bytes(written(rows, dialect)));
        const placed = place(text, { map: { ...listed, decimal, dates } });
        expect(left(placed)).toEqual([]);
        expect(taken(placed)).toEqual(taken(place(written(rows, plain), { map: listed })));
        expect(placed.taken.map(({ known }) => known?.id)).toEqual(rows.map(({ pack }) => pack));
      }),
      { numRuns: 150 },
    );
  });

  test('a bad row never changes what the others give', () => {
    const bad = fc.constantFrom(
      '"never closed;1;L;3;2028-01-01',
      'ends in a quote"',
      '"',
      '""";;"',
      'N-0;10;L;three;2028-01-01',
      'N-0;10;L;3;13/13/2028',
      "=cmd|'/c calc'!A1;10;L;3;2028-01-01",
      'N-0;10;L;3\u202e;2028-01-01;;;;;',
      '\0',
      ';;;;;x',
      ';;;;;;;;;;;;;;;;;;;;;x',
      'No;Item;Pack;Unit;Price;From',
      '<table><tr><td>1</td></tr></table>',
    );
    fc.assert(
      fc.property(prices, fc.array(fc.tuple(bad, fc.nat(12)), { minLength: 1, maxLength: 4 }), (rows, bads) => {
        const good = written(rows, plain).split('\n');
        const [heading = '', ...body] = good.slice(0, -1);
        const mixed = body.map((text) => ({ text, isBad: false }));
        for (const [text, at] of bads) mixed.splice(Math.min(at, mixed.length), 0, { text, isBad: true });
        const said = { map: { ...listed, decimal: '.' as const, dates: 'ymd' as const } };
        const placed = place([heading, ...mixed.map(({ text }) => text), ''].join('\n'), said);
        const clean = place(good.join('\n'), said);
        const withoutRow = ({ taken: all }: PlacedList) => all.map((each) => ({ ...each, row: 0 }));
        expect(withoutRow(placed)).toEqual(withoutRow(clean));
      }),
      { numRuns: 150 },
    );
  });

  test.each([
    ['a point', {}],
    ['a comma', { decimalComma: true, dateOrder: 'mdy' as const }],
    ['three decimals', { coinDecimals: 3, decimalComma: true }],
  ])('taken out and in again changes nothing, with %s', (_, over) => {
    const of = inBook(over);
    const text = priceListCsv(listedPrices(of, DEMO_DAY), of);
    let rows = 0;
    for (const supplier of of.supplier.keys()) {
      const placed = place(text, { of, supplier, remembered: { decimal: '.', dates: 'dmy', articles: { x: 'M01' } } });
      const change = takePriceList.run(derive(of, DEMO_DAY), { supplier, rows: placed.taken.map(takenRow) });
      expect(change.ok && isEmptyChange(change.value)).toBe(true);
      expect(placed.left.every(({ fault }) => fault.kind === 'of-another-supplier')).toBe(true);
      rows += placed.taken.length;
    }
    expect(rows).toBe(listedPrices(of, DEMO_DAY).length);
  });
});
