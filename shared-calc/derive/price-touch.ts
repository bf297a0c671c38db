import { orderSums, type OrderFault } from '#shared-calc/bench/order-sums.ts';
import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { bodyOf as frozenBody } from '#shared-calc/jobs/sold-house.ts';
import { partsOf, reworkQuote } from '#shared-calc/jobs/rework-quote.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import { sameData } from '#shared-calc/records/same-data.ts';
import type { Job, PackPrice, Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { derive, type Derived, type DerivedJob } from './derived.ts';

/** A quote or a job that a change of prices affects, and by how much. */
export interface PriceTouch {
  readonly job: string;
  readonly title: string;
  readonly state: Job['state'];
  /** `Q-0001A`, if an issued quote is affected. */
  readonly quote: string | undefined;
  /** At cost. The quoted price stays, so the difference reduces the margin. */
  readonly cost: { readonly from: number; readonly to: number };
  /** Before tax, if it were quoted again. */
  readonly net: { readonly from: number; readonly to: number };
}

/**
 * Open quotes, and jobs not yet bought, that a change of prices since `before` affects. Prices are read on the first
 * day of the last new price, so that an announced rise shows at once. A quote past its last day is no longer open.
 */
export function priceTouch(before: Records, now: Derived): readonly PriceTouch[] {
  const on = lastNewDay(before, now);
  const prices = { now, old: derive(before, on), changed: derive(now.records, on) };
  return [...now.records.job.values()].flatMap((job) => touchOf(job, prices));
}

interface Prices {
  readonly now: Derived;
  /** At the prices before and now, on the day in question. */
  readonly old: Derived;
  readonly changed: Derived;
}

function touchOf({ id, title, state }: Job, { now, old, changed }: Prices): readonly PriceTouch[] {
  const job = now.job(id);
  if (!job || !isBefore(state, 'ordered')) return [];
  const body = bodyOf(now.records, id);
  if (isBefore(state, 'accepted') && (!body || body.validUntil < now.today)) return [];
  const sumsAt = (at: Derived) => (body ? reworkAt(body, at) : sumsOf(job, at));
  const from = sumsAt(old);
  const to = sumsAt(changed);
  if (!from.ok || !to.ok || !isTouched(from.value, to.value)) return [];
  return [
    {
      job: id,
      title,
      state,
      quote: body && `${body.number}${body.revision}`,
      cost: { from: from.value.costCoins, to: to.value.costCoins },
      net: { from: from.value.netCoins, to: to.value.netCoins },
    },
  ];
}

function lastNewDay({ packPrice }: Records, { records, today }: Derived): Day {
  let day = today;
  for (const price of records.packPrice.values()) {
    if (price.from > day && !sameData(packPrice.get(price.id), price)) day = price.from;
  }
  return day;
}

function bodyOf(records: Records, job: string): QuoteBody | undefined {
  const soldAs = records.job.get(job)?.soldAs;
  const quote = records.issuedQuote.get(soldAs ?? '') ?? latestQuote(records, job);
  return quote && frozenBody(quote);
}

/** An issued quote, bought at other prices. */
function reworkAt(body: QuoteBody, { prices }: Derived): Result<QuoteSums, OrderFault> {
  const parts = partsOf(body);
  return reworkQuote({ ...parts, goods: new Map([...parts.goods, ...prices.goods]) });
}

function sumsOf({ bench, keys, pricing }: DerivedJob, { prices, rules }: Derived): Result<QuoteSums, OrderFault> {
  const sums = orderSums(bench, keys, { ...pricing, prices, rules });
  return sums.ok ? ok(sums.value.quote) : sums;
}

function isTouched(from: QuoteSums, to: QuoteSums): boolean {
  return from.lines.some((line, at) => line.costCoins !== to.lines[at]?.costCoins) || from.netCoins !== to.netCoins;
}

export interface NewPrice {
  readonly material: string;
  readonly label: string;
  readonly amount: number;
  readonly unit: string;
  readonly from: Day;
  readonly beforeCoins: number;
  readonly coins: number;
}

export interface TouchesNow {
  readonly touches: readonly PriceTouch[];
  readonly prices: readonly NewPrice[];
}

/** An accepted job without a quote of ours is compared with the prices of this many days ago. */
const LOOK_BACK_DAYS = 30;

/**
 * How prices that changed since each open quote's own day affect it, and accepted jobs not bought yet: prices in force
 * now, and announced ones.
 */
export function touchesNow(now: Derived): TouchesNow {
  const { records } = now;
  const jobs = [...records.job.values()].filter((job) => isBefore(job.state, 'ordered'));
  const since = Map.groupBy(jobs, (job) => pricedOn(job, now) ?? '');
  since.delete('');
  const touches = [...since].flatMap(([day, priced]) => {
    const ids = new Set(priced.map(({ id }) => id));
    return priceTouch({ ...records, packPrice: pricesUntil(records, day) }, now).filter(({ job }) => ids.has(job));
  });
  const inOrder = touches.toSorted((one, other) => orderOf(jobs, one) - orderOf(jobs, other));
  const first = [...since.keys()].toSorted()[0];
  return { touches: inOrder, prices: first === undefined ? [] : newPrices(records, first) };
}

function orderOf(jobs: readonly Job[], { job }: PriceTouch): number {
  return jobs.findIndex(({ id }) => id === job);
}

/** The day whose prices the client was given; for an accepted job without a quote, the look-back day. */
function pricedOn(job: Job, { records, today }: Derived): Day | undefined {
  const body = bodyOf(records, job.id);
  if (body) return body.pricesOn;
  return isBefore(job.state, 'accepted') ? undefined : addDays(today, -LOOK_BACK_DAYS);
}

function pricesUntil({ packPrice }: Pick<Records, 'packPrice'>, day: Day): Records['packPrice'] {
  return new Map([...packPrice].filter(([, price]) => price.from <= day));
}

/** Prices that start after a day, each with the one before it, latest first; a pack's first price changes nothing. */
function newPrices(records: Records, since: Day): readonly NewPrice[] {
  const prices: NewPrice[] = [];
  for (const [id, ofPack] of Map.groupBy(records.packPrice.values(), (price) => price.pack)) {
    const pack = records.pack.get(id);
    const inOrder = ofPack.toSorted((one, other) => (one.from < other.from ? -1 : 1));
    const goods = pack && (records.material.get(pack.material) ?? records.tank.get(pack.material));
    if (!pack || !goods) continue;
    const unit = records.material.get(pack.material)?.unit ?? 'each';
    for (const { price, before } of changesIn(inOrder, since)) {
      const { from, priceCoins: coins } = price;
      const { material, amount } = pack;
      prices.push({ material, label: goods.label, amount, unit, from, coins, beforeCoins: before.priceCoins });
    }
  }
  return prices.toSorted((one, other) => (one.from === other.from ? 0 : one.from < other.from ? 1 : -1));
}

function changesIn(
  prices: readonly PackPrice[],
  since: Day,
): readonly { readonly price: PackPrice; readonly before: PackPrice }[] {
  return prices.flatMap((price, at) => {
    const before = prices[at - 1];
    return before && price.from > since && price.priceCoins !== before.priceCoins ? [{ price, before }] : [];
  });
}
