import { answerOfState } from '#shared-calc/bench/check-state.ts';
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';
import { checksOf } from '#shared-calc/bench/checks.ts';
import { needAmounts } from '#shared-calc/bench/order-amounts.ts';
import { orderNeeds, orderSums } from '#shared-calc/bench/order-sums.ts';
import { workRule } from '#shared-calc/bench/work-rule.ts';
import type { MaterialNeed } from '#shared-calc/buy/material-need.ts';
import { shoppingRun } from '#shared-calc/buy/shopping-run.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { fromBase, unitOf } from '#shared-calc/quantity/unit.ts';
import type { Result } from '#shared-calc/result.ts';
import { demoBench, demoPricing, demoRecords } from '#tests/demo-bench.ts';
import { lwJson, useDemoBook } from '#tests/electron/cli/run-cli.ts';

export interface Order {
  readonly sizes: readonly string[];
  readonly set?: Readonly<Record<string, string>>;
  readonly materials?: readonly string[];
  /** In the material's own unit. */
  readonly stock?: Readonly<Record<string, { readonly amount: number; readonly unit: string }>>;
}

type Told = number | string | boolean | null;

/** Figures in the unit of their line, and which checks hold. */
export interface SizeTold {
  readonly figures: Readonly<Record<string, Told>>;
  readonly checks: Readonly<Record<string, boolean | null>>;
}

/** `packs` as `1x45 2x10`; money as decimal text. */
export interface NeedTold {
  readonly used: number;
  readonly unit: string;
  readonly packs: string;
  readonly packsCost: string;
  readonly leftOver: number;
}

export interface RunTold {
  readonly materials: Readonly<Record<string, NeedTold & { readonly aloneCost: string }>>;
  /** By supplier: goods, and carriage on them. */
  readonly suppliers: Readonly<Record<string, readonly [string, string]>>;
  /** Together, alone, landed together, landed alone. */
  readonly sums: readonly [string, string, string, string];
}

export interface NeedsTold {
  readonly needs: Readonly<Record<string, NeedTold>>;
  readonly packsTotal: string;
  readonly landed: string;
}

/** One way to ask the program. */
export interface Way {
  readonly way: string;
  readonly work: (rule: string) => Promise<Told>;
  readonly bench: (order: Order) => Promise<Readonly<Record<string, SizeTold>>>;
  readonly needs: (order: Order) => Promise<NeedsTold>;
  readonly run: (order: Order) => Promise<RunTold>;
  /** By quote group: cost and price. */
  readonly quote: (order: Order) => Promise<Readonly<Record<string, readonly [string, string]>>>;
}

/** The core over the demo's records, and the command line over a real book of it. */
export function twoWays(): readonly Way[] {
  return [core, commandLine(useDemoBook())].map(askedOnce);
}

/** Each question is asked only once. */
function askedOnce({ way, work, bench, needs, run, quote }: Way): Way {
  return { way, work, bench: once(bench), needs: once(needs), run: once(run), quote: once(quote) };
}

function once<T>(ask: (order: Order) => Promise<T>): (order: Order) => Promise<T> {
  const known = new Map<string, Promise<T>>();
  return (order) => {
    const key = JSON.stringify(order);
    const answer = known.get(key) ?? ask(order);
    known.set(key, answer);
    return answer;
  };
}

/** Figures rounded to the decimals that each is printed with. */
export function asPrinted(
  told: Readonly<Record<string, Told | undefined>>,
  printed: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(printed).map(([name, text]) => {
      const value = told[name];
      const decimals = text.split('.')[1]?.length ?? 0;
      return [name, typeof value === 'number' ? Number(value.toPrecision(12)).toFixed(decimals) : String(value)];
    }),
  );
}

const records = demoRecords();
const pricing = demoPricing(records);

const core: Way = {
  way: 'the core',
  work: async (rule) => {
    const worked = valueOf(workRule(rule));
    return inUnit(worked.value, worked.unit);
  },
  bench: async (order) => {
    const bench = benchOf(order);
    const lines = bench.input().lines;
    return Object.fromEntries(
      order.sizes.map((size) => [
        size,
        {
          figures: Object.fromEntries(lines.map(({ name, unit }) => [name, inUnit(bench.box(size, name).value, unit)])),
          checks: Object.fromEntries(
            checksOf(bench, size, plainDisplay).map((check) => [check.line.name, answerOfState(check.state) ?? null]),
          ),
        },
      ]),
    );
  },
  needs: async (order) => {
    const list = valueOf(orderNeeds(benchOf(order), order.sizes, { ...pricing, ...buyingOf(order) }));
    return {
      needs: Object.fromEntries(list.needs.map((need) => [need.material, needTold(need)])),
      packsTotal: money(list.packsTotalCoins),
      landed: money(list.landedCoins),
    };
  },
  run: async (order) => {
    const bench = benchOf(order);
    const parts = order.sizes.map((size) => ({
      id: size,
      job: 'order',
      needs: valueOf(needAmounts(bench, [size], pricing.prices)),
    }));
    const run = valueOf(shoppingRun(parts, { prices: pricing.prices, ...buyingOf(order) }));
    return {
      materials: Object.fromEntries(
        run.materials.map((need) => [need.material, { ...needTold(need), aloneCost: money(need.aloneCoins) }]),
      ),
      suppliers: Object.fromEntries(
        run.suppliers.map((bill) => [bill.name, [money(bill.goodsCoins), money(bill.carriageCoins)]]),
      ),
      sums: [
        money(run.togetherCoins),
        money(run.aloneCoins),
        money(run.landedTogetherCoins),
        money(run.landedAloneCoins),
      ],
    };
  },
  quote: async (order) => {
    const { quote } = valueOf(orderSums(benchOf(order), order.sizes, pricing));
    return Object.fromEntries(quote.lines.map((line) => [line.group, [money(line.costCoins), money(line.priceCoins)]]));
  },
};

function benchOf(order: Order) {
  return demoBench({ sizes: order.sizes, job: order.set ?? {} }, records);
}

function buyingOf({ stock = {}, materials }: Order) {
  return {
    stock: new Map(Object.entries(stock).map(([material, { amount }]) => [material, amount])),
    ...(materials && { materials }),
  };
}

function needTold(need: MaterialNeed): NeedTold {
  const { used, unit, packsCoins, leftOver } = need;
  const packs = need.packs.map((pack) => `${pack.count}x${pack.amount}`).join(' ');
  return { used, unit, packs, packsCost: money(packsCoins), leftOver };
}

function inUnit(value: number | string | boolean | undefined, unit: string): Told {
  return typeof value === 'number' ? fromBase(value, unitOf(unit)) : (value ?? null);
}

function money(coins: number): string {
  return (coins / 100).toFixed(2);
}

function valueOf<T, F>(result: Result<T, F>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.value;
}

const toldValue = z.union([z.number(), z.string(), z.boolean(), z.null()]);
const WorkJson = z.object({ value: toldValue });
const BenchJson = z.object({
  columns: z.array(
    z.object({
      size: z.string(),
      lines: z.record(z.string(), z.object({ value: toldValue })),
      checks: z.array(z.object({ line: z.string().nullable(), holds: z.boolean().nullable() })),
    }),
  ),
});
const PackJson = z.object({ size: z.number(), count: z.number() });
const NeedJson = z
  .object({
    material: z.string(),
    used: z.number(),
    unit: z.string(),
    packs: z.array(PackJson),
    packsCost: z.string(),
    leftOver: z.number(),
    aloneCost: z.string().optional(),
  })
  .transform(({ material, used, unit, packs, packsCost, leftOver, aloneCost = '' }) => ({
    material,
    aloneCost,
    told: { used, unit, packs: packs.map(({ size, count }) => `${count}x${size}`).join(' '), packsCost, leftOver },
  }));
const NeedsJson = z.object({ needs: z.array(NeedJson), packsTotal: z.string(), landed: z.string() });
const RunJson = z.object({
  materials: z.array(NeedJson),
  suppliers: z.array(z.object({ supplier: z.string(), goods: z.string(), carriage: z.string() })),
  together: z.string(),
  alone: z.string(),
  landedTogether: z.string(),
  landedAlone: z.string(),
});
const QuoteJson = z.object({ lines: z.array(z.object({ group: z.string(), cost: z.string(), price: z.string() })) });

function commandLine({ book, folder }: ReturnType<typeof useDemoBook>): Way {
  const ask = (command: string, order: Order) => lwJson(command, ...optionsOf(order, folder()), '--book', book());
  return {
    way: 'the command line',
    work: async (rule) => WorkJson.parse(await lwJson('work', rule)).value,
    bench: async (order) => {
      const { columns } = BenchJson.parse(await ask('bench', order));
      return Object.fromEntries(
        columns.map(({ size, lines, checks }) => [
          size,
          {
            figures: Object.fromEntries(Object.entries(lines).map(([name, { value }]) => [name, value])),
            checks: Object.fromEntries(checks.flatMap(({ line, holds }) => (line === null ? [] : [[line, holds]]))),
          },
        ]),
      );
    },
    needs: async (order) => {
      const { needs, packsTotal, landed } = NeedsJson.parse(await ask('needs', order));
      return { needs: Object.fromEntries(needs.map(({ material, told }) => [material, told])), packsTotal, landed };
    },
    run: async (order) => {
      const run = RunJson.parse(await ask('run', order));
      return {
        materials: Object.fromEntries(
          run.materials.map(({ material, told, aloneCost }) => [material, { ...told, aloneCost }]),
        ),
        suppliers: Object.fromEntries(run.suppliers.map((bill) => [bill.supplier, [bill.goods, bill.carriage]])),
        sums: [run.together, run.alone, run.landedTogether, run.landedAlone],
      };
    },
    quote: async (order) => {
      const { lines } = QuoteJson.parse(await ask('quote', order));
      return Object.fromEntries(lines.map(({ group, cost, price }) => [group, [cost, price]]));
    },
  };
}

function optionsOf({ sizes, set = {}, materials, stock }: Order, folder: string): readonly string[] {
  return [
    '--sizes',
    sizes.join(','),
    ...Object.entries(set).flatMap(([line, text]) => ['--set', `${line}=${text}`]),
    ...(materials ? ['--materials', materials.join(',')] : []),
    ...(stock ? ['--stock', stockFile(stock, folder)] : []),
  ];
}

function stockFile(stock: NonNullable<Order['stock']>, folder: string): string {
  const file = path.join(folder, 'stock.csv');
  const rows = Object.entries(stock).map(([material, { amount, unit }]) => `${material},${amount},${unit}`);
  writeFileSync(file, ['material,amount,unit', ...rows, ''].join('\r\n'));
  return file;
}
