import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

/*
 * The figures of fixtures/worked/orders.json were worked by an independent program in another language from the
 * recipe's text alone, over the demo's prices, to ten figures; money, counts and packs are exact.
 */
const file = new URL('../../fixtures/worked/orders.json', import.meta.url);

const value = z.union([z.number(), z.string(), z.boolean(), z.null()]);
const asked = { why: z.string(), sizes: z.string(), set: z.array(z.string()) };
const Sums = z.object({ cost: z.string(), net: z.string(), gross: z.string(), deposit: z.string(), hours: z.number() });
const Size = z.object({
  lines: z.record(z.string(), value),
  notPassed: z.array(z.string()),
  sums: Sums.nullable(),
});
const Quote = Sums.extend({ tax: z.record(z.string(), z.string()), prices: z.record(z.string(), z.string()) });
const RunSums = z.object({
  together: z.string(),
  alone: z.string(),
  landedTogether: z.string(),
  landedAlone: z.string(),
});
const Run = RunSums.extend({ packs: z.record(z.string(), z.string()) });

const orders = z
  .array(
    z.discriminatedUnion('ask', [
      z.strictObject({ ...asked, ask: z.literal('bench'), told: z.record(z.string(), Size) }),
      z.strictObject({ ...asked, ask: z.literal('quote'), basis: z.string(), told: Quote }),
      z.strictObject({ ...asked, ask: z.literal('run'), stock: z.array(z.string()), told: Run }),
    ]),
  )
  .parse(JSON.parse(readFileSync(file, 'utf8')));

type Order = (typeof orders)[number];
type OrderOf<Ask extends Order['ask']> = Extract<Order, { ask: Ask }>;

const BenchJson = z.object({
  columns: z.array(
    z.object({
      size: z.string(),
      lines: z.record(z.string(), z.object({ value })),
      checks: z.array(z.object({ line: z.string().nullable(), holds: z.boolean().nullable() })),
      sums: Sums.nullable(),
    }),
  ),
});
const QuoteJson = Sums.extend({
  tax: z.record(z.string(), z.string()),
  lines: z.array(z.object({ group: z.string(), price: z.string() })),
});
const RunJson = RunSums.extend({
  materials: z.array(
    z.object({ material: z.string(), packs: z.array(z.object({ size: z.number(), count: z.number() })) }),
  ),
});

/** They were worked for tanks whose air, humidity and warming are measured; how these are worked has its own tests. */
const measured = [
  'air_changes=1 each/h',
  'tank_air=24 degC',
  'tank_air_summer=24 degC',
  'tank_humidity=90 %',
  'tank_humidity_summer=90 %',
  'open_glass=glass_area',
  'warm_factor=1',
];

describe('orders worked elsewhere', () => {
  const { book, folder } = useDemoBook();

  test.each(of('bench'))('sizes side by side: $why', async (order) => {
    const { columns } = BenchJson.parse(await ask(order, book()));
    const told = columns.map(({ size, lines, checks, sums }): [string, z.infer<typeof Size>] => {
      const figures = Object.keys(order.told[size]?.lines ?? {}).map((name): [string, z.infer<typeof value>] => [
        name,
        tenFigures(lines[name]?.value),
      ]);
      const notPassed = checks.flatMap(({ line, holds }) => (line === null || holds === true ? [] : [line]));
      return [size, { lines: Object.fromEntries(figures), notPassed, sums }];
    });
    expect(Object.fromEntries(told)).toEqual(order.told);
  });

  test.each(of('quote'))('a quote: $why', async (order) => {
    const { lines, ...sums } = QuoteJson.parse(await ask(order, book(), ['--basis', order.basis]));
    const prices = Object.fromEntries(lines.map(({ group, price }) => [group, price]));
    expect({ ...sums, prices }).toEqual(order.told);
  });

  test.each(of('run'))('a shopping run: $why', async (order) => {
    const { materials, ...sums } = RunJson.parse(await ask(order, book(), stockOption(order, folder())));
    const packs = materials
      .filter(({ material }) => order.told.packs[material] !== undefined)
      .map((each): [string, string] => [
        each.material,
        each.packs.map(({ count, size }) => `${count}x${size}`).join(' '),
      ]);
    expect({ ...sums, packs: Object.fromEntries(packs) }).toEqual(order.told);
  });
});

function of<Ask extends Order['ask']>(kind: Ask): readonly OrderOf<Ask>[] {
  return orders.filter((order): order is OrderOf<Ask> => order.ask === kind);
}

function ask(order: Order, book: string, more: readonly string[] = []): Promise<unknown> {
  const sets = [...(order.ask === 'bench' ? measured : []), ...order.set].flatMap((each) => ['--set', each]);
  return lwJson(order.ask, '--sizes', order.sizes, ...sets, ...more, '--book', book);
}

function stockOption({ stock }: OrderOf<'run'>, folder: string): readonly string[] {
  if (stock.length === 0) return [];
  const kept = path.join(folder, 'stock.csv');
  writeFileSync(kept, ['material,amount,unit', ...stock, ''].join('\r\n'));
  return ['--stock', kept];
}

function tenFigures(told: z.infer<typeof value> | undefined): z.infer<typeof value> {
  return typeof told === 'number' ? Number(told.toPrecision(10)) : (told ?? null);
}
