import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import { priceBook } from '#shared-calc/buy/price-book.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { latestQuote } from './issue-quote.ts';
import { isBefore } from './move-job.ts';
import { openJob, sumsOf } from './open-sheet.ts';
import { readQuoteBody, type QuoteBody } from './quote-body.ts';
import { partsOf, reworkQuote } from './rework-quote.ts';

/** A quote or a job that a change of prices touches, and by how much. */
export interface PriceTouch {
  readonly job: string;
  readonly title: string;
  readonly state: Job['state'];
  /** `Q-0001A`, where it is what was issued that is touched. */
  readonly quote: string | undefined;
  /** At cost. What was quoted stays, so this is what it eats of the margin. */
  readonly cost: { readonly from: number; readonly to: number };
  /** Before tax, were it quoted anew. */
  readonly net: { readonly from: number; readonly to: number };
}

export interface PriceChange {
  readonly before: Records;
  readonly after: Records;
  readonly today: Day;
}

/**
 * Open quotes and jobs not yet bought that a change of prices touches. Prices are read on the day the last of the
 * new ones holds from, so that a rise announced ahead shows at once. A quote past its last day is open no more.
 */
export function priceTouch({ before, after, today }: PriceChange): readonly PriceTouch[] {
  const on = lastNewDay({ before, after, today });
  const touches: PriceTouch[] = [];
  for (const job of after.job.values()) {
    if (!isBefore(job.state, 'ordered')) continue;
    const body = bodyOf(after, job);
    if (isBefore(job.state, 'accepted') && (!body || body.validUntil < today)) continue;
    const work = (records: Records) => (body ? reworkOn(body, records, on) : workOn(job, records, on));
    const from = work(before);
    const to = work(after);
    if (!from.ok || !to.ok || !isTouched(from.value, to.value)) continue;
    touches.push({
      job: job.id,
      title: job.title,
      state: job.state,
      quote: body && `${body.number}${body.revision}`,
      cost: { from: from.value.costCoins, to: to.value.costCoins },
      net: { from: from.value.netCoins, to: to.value.netCoins },
    });
  }
  return touches;
}

function lastNewDay({ before, after, today }: PriceChange): Day {
  let day = today;
  for (const price of after.packPrice.values()) {
    if (price.from > day && !sameData(before.packPrice.get(price.id), price)) day = price.from;
  }
  return day;
}

function bodyOf(records: Records, job: Job): QuoteBody | undefined {
  const quote = latestQuote(records, job.id);
  return quote && readQuoteBody(quote.body);
}

/** What was issued, bought at the prices of a day. */
function reworkOn(body: QuoteBody, records: Records, on: Day): Result<QuoteSums, OrderFault> {
  const parts = partsOf(body);
  const now = priceBook(records, { on, oldPriceDays: workshopOf(records).oldPriceDays });
  return reworkQuote({ ...parts, goods: new Map([...parts.goods, ...now.goods]) });
}

function workOn(job: Job, records: Records, on: Day): Result<QuoteSums, OrderFault> {
  const sums = sumsOf(openJob(records, job, on));
  return sums.ok ? ok(sums.value.quote) : sums;
}

function isTouched(from: QuoteSums, to: QuoteSums): boolean {
  return from.lines.some((line, at) => line.costCoins !== to.lines[at]?.costCoins) || from.netCoins !== to.netCoins;
}
