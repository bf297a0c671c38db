import { openBench, type Bench } from '#shared-calc/bench/open-bench.ts';
import { orderSums, type OrderFault, type OrderSums, type Pricing } from '#shared-calc/bench/order-sums.ts';
import { priceBook, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { hourCoins } from '#shared-calc/price/hour-coins.ts';
import { quoteRules } from '#shared-calc/price/quote-rules.ts';
import type { Job, Line, Records } from '#shared-calc/records/records.ts';
import { bySortKey } from '#shared-calc/records/sort-key.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import type { Result } from '#shared-calc/result.ts';
import { jobSheet, type JobSheet, type WrittenByLine } from './job-sheet.ts';

/** A job's sheet at work. Close its bench when done. */
export interface OpenSheet {
  readonly sheet: JobSheet;
  readonly bench: Bench;
  readonly pricing: Pricing;
}

/** A job with its bench, priced as of a day by its own basis. */
export function openJob(records: Records, job: Job, on: Day): OpenSheet {
  const sheet = jobSheet(records, job);
  const pricing = pricingOn(records, sheet, on);
  return { sheet, bench: openSheet(sheet, linesOf(records, sheet.recipe), pricing.prices), pricing };
}

/** Works an opened sheet and closes it. */
export function sumsOf({ sheet, bench, pricing }: OpenSheet): Result<OrderSums, OrderFault> {
  const sums = orderSums(bench, keysOf(sheet), pricing);
  bench.close();
  return sums;
}

export function openSheet(
  sheet: Pick<JobSheet, 'columns' | 'whole'>,
  lines: readonly Line[],
  prices: PriceBook,
): Bench {
  return openBench({
    lines,
    columns: sheet.columns.map((column) => ({ ...column, locals: textsOf(column.locals) })),
    job: textsOf(sheet.whole),
    isOldPrice: (material) => prices.goods.get(material)?.packs.some((pack) => pack.old) ?? false,
  });
}

/** What a sheet is bought and priced by on a day: the house's rules, and the job's own basis and lines. */
export function pricingOn(records: Records, { job, oneOffs }: Pick<JobSheet, 'job' | 'oneOffs'>, on: Day): Pricing {
  const workshop = workshopOf(records);
  return {
    prices: priceBook(records, { on, oldPriceDays: workshop.oldPriceDays }),
    rules: quoteRules(workshop, records, hourCoins(records)),
    basis: job?.basis ?? 'used',
    oneOffs,
  };
}

/** A recipe's lines in order. */
export function linesOf(records: Pick<Records, 'line'>, recipe: string): readonly Line[] {
  return [...records.line.values()].filter((line) => line.recipe === recipe).toSorted(bySortKey);
}

export function keysOf(sheet: Pick<JobSheet, 'columns'>): readonly string[] {
  return sheet.columns.map((column) => column.key);
}

export function textsOf(written: WrittenByLine): ReadonlyMap<string, string> {
  return new Map([...written].map(([line, { text }]) => [line, text]));
}
