import path from 'node:path';
import { parse } from 'csv-parse/sync';
import { beforeAll, describe, expect, test } from 'vitest';
import { z } from 'zod';
import { openBook } from '#electron/book/open-book.ts';
import { makeDemoBook } from '#electron/book/seed-demo.ts';
import { today } from '#electron/service/today.ts';
import { emptyChange } from '#shared-calc/records/change.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { lw, lwJson, useDemoBook } from './run-cli.ts';

const HOSTILE = '=HYPERLINK("http://evil.example","clay")';
const { book, folder } = useDemoBook();
const commaBook = () => path.join(folder(), 'Comma.loamwright');

beforeAll(() => {
  const made = makeDemoBook(commaBook(), { today: today(), backups: false });
  if (!made.ok) throw new Error(JSON.stringify(made.fault));
  made.value.close();
  spoil(book(), false);
  spoil(commaBook(), true);
});

/** Gives the clay of a book a name that other programs would run as a formula, and sets the book's decimal sign. */
function spoil(file: string, decimalComma: boolean): void {
  const opened = openBook(file, { today: today(), backups: false });
  if (!opened.ok) throw new Error(JSON.stringify(opened.fault));
  const records = opened.value.records();
  const clay = records.material.get('M01');
  if (!clay) throw new Error('no clay');
  const workshop = workshopOf(records);
  const nasty = { kind: 'material', from: clay, to: { ...clay, label: HOSTILE } } as const;
  const comma = { kind: 'workshop', from: workshop, to: { ...workshop, decimalComma } } as const;
  const change = { ...emptyChange('spoilt'), updated: decimalComma ? [nasty, comma] : [nasty] };
  const done = opened.value.apply(change, opened.value.revision());
  opened.value.close();
  if (!done.ok) throw new Error(JSON.stringify(done.fault));
}

const Row = z.record(z.string(), z.string());

interface Style {
  readonly name: string;
  readonly file: () => string;
  readonly delimiter: string;
  readonly number: (text: string | undefined) => number;
}

const styles: readonly Style[] = [
  { name: 'decimal point', file: book, delimiter: ',', number: (text = '') => Number(text) },
  { name: 'decimal comma', file: commaBook, delimiter: ';', number: (text = '') => Number(text.replace(',', '.')) },
];

async function csv({ file, delimiter }: Style, ...argv: readonly string[]) {
  const { code, out, err } = await lw(...argv, '--csv', '--book', file());
  if (code !== 0) throw new Error(err);
  return z.array(Row).parse(parse(out, { delimiter, columns: true, record_delimiter: '\r\n' }));
}

const NeedsJson = z.object({
  needs: z.array(
    z.object({ material: z.string(), used: z.number(), cost: z.string(), packsCost: z.string(), leftOver: z.number() }),
  ),
  total: z.string(),
  packsTotal: z.string(),
});
const BenchJson = z.object({
  columns: z.array(
    z.object({ lines: z.record(z.string(), z.object({ value: z.union([z.number(), z.string(), z.boolean()]) })) }),
  ),
});
const RunJson = z.object({
  materials: z.array(z.object({ material: z.string(), used: z.number(), cost: z.string(), aloneCost: z.string() })),
  together: z.string(),
  landedTogether: z.string(),
});
const QuoteJson = z.object({
  lines: z.array(z.object({ label: z.string(), price: z.string(), taxClass: z.string() })),
  net: z.string(),
  gross: z.string(),
  deposit: z.string(),
});

describe.each(styles)('CSV of a book with a $name, read back by another reader', (style) => {
  test('needs: every row as in the answer for programs', async () => {
    const { needs, total, packsTotal } = NeedsJson.parse(
      await lwJson('needs', '--sizes', 'T07,T03', '--book', style.file()),
    );
    const rows = await csv(style, 'needs', '--sizes', 'T07,T03');
    const figures = rows.map((row) => [
      row['material'],
      ...['used', 'used cost', 'packs cost', 'left over'].map((field) => style.number(row[field])),
    ]);
    expect(figures).toEqual([
      ...needs.map((need) => [need.material, need.used, Number(need.cost), Number(need.packsCost), need.leftOver]),
      ['total', 0, Number(total), Number(packsTotal), 0],
    ]);
  });

  test('a name that another program would run is only a name', async () => {
    const rows = await csv(style, 'needs', '--sizes', 'T07', '--materials', 'M01,M04');
    expect(rows.map((row) => row['label'])).toEqual([`'${HOSTILE}`, 'Calcined clay 2-6 mm', '']);
  });

  test('bench: every figure as in the answer for programs, below zero too', async () => {
    const options = [
      '--sizes',
      'T07,T07',
      '--set',
      'T07#2.drainage=160 mm',
      '--lines',
      'kit,public_site,drainage,soil_front,vent_share',
    ];
    const { columns } = BenchJson.parse(await lwJson('bench', ...options, '--book', style.file()));
    const rows = await csv(style, 'bench', ...options);
    const words = { true: 'yes', false: 'no' } as const;
    for (const [at, size] of ['T07', 'T07#2'].entries()) {
      const shown = rows.map((row) => (/^-?\d/.test(row[size] ?? '') ? style.number(row[size]) : row[size]));
      const values = Object.values(columns[at]?.lines ?? {}).map(({ value }) =>
        typeof value === 'boolean' ? words[`${value}`] : value,
      );
      expect(shown).toEqual(values);
    }
    expect(rows.find((row) => row['line'] === 'soil_front')?.['T07#2']).toBe('-30');
  });

  test('run: materials, then carriage, then the sums', async () => {
    const run = RunJson.parse(await lwJson('run', '--sizes', 'T03,T07', '--book', style.file()));
    const rows = await csv(style, 'run', '--sizes', 'T03,T07');
    const goods = rows.filter((row) => row['material'] !== '');
    const figures = goods.map((row) => [
      row['material'],
      ...['needed', 'together', 'alone'].map((field) => style.number(row[field])),
    ]);
    expect(figures).toEqual(
      run.materials.map((need) => [need.material, need.used, Number(need.cost), Number(need.aloneCost)]),
    );
    const sum = (label: string) => style.number(rows.find((row) => row['label'] === label)?.['together']);
    expect([sum('goods'), sum('landed')]).toEqual([Number(run.together), Number(run.landedTogether)]);
  });

  test('the client\u2019s quote shows prices, and no cost or margin', async () => {
    const quote = QuoteJson.parse(await lwJson('quote', '--sizes', 'T07', '--book', style.file()));
    const rows = await csv(style, 'quote', '--sizes', 'T07');
    expect(rows.map((row) => Object.keys(row))).toEqual(rows.map(() => ['item', 'price', 'tax class']));
    const lines = rows
      .slice(0, quote.lines.length)
      .map((row) => [row['item'], style.number(row['price']), row['tax class']]);
    expect(lines).toEqual(quote.lines.map(({ label, price, taxClass }) => [label, Number(price), taxClass]));
    const sum = (item: string) => style.number(rows.find((row) => row['item'] === item)?.['price']);
    expect([sum('Before tax'), sum('Price'), sum('Deposit')]).toEqual(
      [quote.net, quote.gross, quote.deposit].map(Number),
    );
  });
});

describe('quote --csv', () => {
  test('--inside is the builder\u2019s: cost and margin too', async () => {
    const [plain] = styles;
    if (!plain) throw new Error('no style');
    const rows = await csv(plain, 'quote', '--sizes', 'T07', '--inside');
    expect(rows[0]).toEqual({ item: 'Tank', price: '305.71', 'tax class': 'standard', cost: '214.00', margin: '0.3' });
  });

  test('nothing of it is in the client\u2019s', async () => {
    const { out } = await lw('quote', '--sizes', 'T07', '--csv', '--book', book());
    expect([out.includes('214.00'), out.toLowerCase().includes('margin'), out.toLowerCase().includes('cost')]).toEqual([
      false,
      false,
      false,
    ]);
  });
});

describe('--bom', () => {
  test.each([
    [['quote', '--sizes', 'T07', '--csv', '--bom'], true],
    [['quote', '--sizes', 'T07', '--csv'], false],
    [['bench', '--sizes', 'T07', '--lines', 'kit', '--csv', '--bom'], true],
    [['needs', '--sizes', 'T07', '--csv', '--bom'], true],
    [['run', '--sizes', 'T07', '--csv', '--bom'], true],
    [['run', '--sizes', 'T07', '--bom'], false],
  ])('%j starts with the mark: %s', async (argv, marked) => {
    const { out } = await lw(...argv, '--book', book());
    expect(out.startsWith('\ufeff')).toBe(marked);
    expect(out.lastIndexOf('\ufeff')).toBe(marked ? 0 : -1);
  });
});
