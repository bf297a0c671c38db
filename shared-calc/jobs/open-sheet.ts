import { onceBench } from '#shared-calc/bench/once-bench.ts';
import { orderSums, type OrderFault, type OrderSums, type Pricing } from '#shared-calc/bench/order-sums.ts';
import { priceBook } from '#shared-calc/buy/price-book.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { hourCoins } from '#shared-calc/price/hour-coins.ts';
import { quoteRules } from '#shared-calc/price/quote-rules.ts';
import type { Job, Line, Records } from '#shared-calc/records/records.ts';
import { bySortKey } from '#shared-calc/records/sort-key.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import type { Result } from '#shared-calc/result.ts';
import { jobSheet, keysOf, type JobSheet } from './job-sheet.ts';
import { sheetInput, type WorkedJob } from './worked-job.ts';

/** A job with its bench, priced as of a day by its own basis. */
export function openJob(records: Records, job: Job, on: Day): WorkedJob {
  const sheet = jobSheet(records, job);
  const pricing = pricingOn(records, sheet, on);
  return { sheet, bench: onceBench(sheetInput(sheet, linesOf(records, sheet.recipe), pricing.prices)), pricing };
}

export function sumsOf({ sheet, bench, pricing }: WorkedJob): Result<OrderSums, OrderFault> {
  return orderSums(bench, keysOf(sheet), pricing);
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
