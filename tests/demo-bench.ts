import type { BenchInput } from '#shared-calc/bench/bench-input.ts';
import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { openBench, type Bench, type LiveBench } from '#shared-calc/bench/open-bench.ts';
import type { Pricing } from '#shared-calc/bench/order-sums.ts';
import { priceBook, type PriceBook } from '#shared-calc/buy/price-book.ts';
import { quoteRules } from '#shared-calc/price/quote-rules.ts';
import type { ColumnInput } from '#shared-calc/recipe/column.ts';
import { mapKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoFiles, readDemo, readDemoRecipe, type DemoKind } from '#tests/fixtures/demo/read-demo.ts';

/** The date for the demo's figures: its prices are valid from the first of that month. */
export const DEMO_DAY = '2027-03-08';

export const demoRecipes = ['H1', 'H2', 'H3', 'H4'] as const;

/** The demo workshop as records in memory, as a book returns them. */
export function demoRecords(): Records {
  const recipes = demoRecipes.map(readDemoRecipe);
  const lists: Partial<Record<RecordKind, readonly { readonly id: string }[]>> = {
    recipe: recipes.map((each) => each.recipe),
    line: recipes.flatMap((each) => each.lines),
  };
  for (const kind of Object.keys(demoFiles) as DemoKind[]) lists[kind] = readDemo(kind);
  return mapKinds<Records>((kind) => new Map((lists[kind] ?? []).map((record) => [record.id, record])));
}

interface DemoOrder {
  readonly recipe?: string;
  readonly sizes: readonly string[];
  readonly job?: Readonly<Record<string, string>>;
  readonly locals?: Readonly<Record<string, Readonly<Record<string, string>>>>;
}

/** A bench over the demo: `demoBench({ sizes: ['T07'], job: { soil_rise: '0 mm' } })`. */
export function demoBench(order: DemoOrder, records: Records = demoRecords()): LiveBench {
  return openBench(demoInput(order, records));
}

/** The same, computed once and not updated. */
export function demoOnce(order: DemoOrder, records: Records = demoRecords()): Bench {
  return onceBench(demoInput(order, records));
}

function demoInput({ recipe = 'H1', sizes, job = {}, locals = {} }: DemoOrder, records: Records): BenchInput {
  return {
    lines: [...records.line.values()].filter((line) => line.recipe === recipe),
    columns: sizes.map((code) => demoColumn(records, code, locals[code] ?? {})),
    job: new Map(Object.entries(job)),
    isOldPrice: () => false,
  };
}

export function demoColumn(records: Records, code: string, locals: Readonly<Record<string, string>> = {}): ColumnInput {
  const tank = records.tank.get(code);
  if (!tank) throw new Error(`no tank ${code}`);
  return { key: code, tank, label: '', count: 1, locals: new Map(Object.entries(locals)) };
}

/** The demo's prices on that date. */
export function demoPrices(records: Records = demoRecords()): PriceBook {
  return priceBook(records, { on: DEMO_DAY, oldPriceDays: workshopOf(records).oldPriceDays });
}

/** The demo's prices and rules on that date. */
export function demoPricing(records: Records = demoRecords()): Pricing {
  const workshop = workshopOf(records);
  return {
    prices: demoPrices(records),
    rules: quoteRules(workshop, records),
    basis: 'used',
  };
}
