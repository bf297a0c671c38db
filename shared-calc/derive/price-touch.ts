import { priceBook, type PriceBook } from '#shared-calc/buy/price-book.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { isBefore } from '#shared-calc/jobs/move-job.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { partsOf, reworkQuote } from '#shared-calc/jobs/rework-quote.ts';
import { bodyOf, soldQuote } from '#shared-calc/jobs/sold-house.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import type { Derived } from './derived.ts';

interface FromTo {
  readonly from: number;
  readonly to: number;
}

/** An open quote that prices or wages since its issue affect, and by how much, in coins. */
export interface PriceTouch {
  readonly job: string;
  readonly title: string;
  readonly state: Job['state'];
  /** `Q-0001A` */
  readonly quote: string;
  /** From the quote's own frozen goods and wages to those of the book. */
  readonly cost: FromTo;
  /** Before tax, if it were quoted again; it falls that much below the margin. */
  readonly net: FromTo;
  /** What is left of the quoted price before tax, which stays. */
  readonly margin: FromTo;
}

/** A pack whose price differs from what an open quote was worked with. */
export interface NewPrice {
  readonly pack: string;
  readonly material: string;
  readonly label: string;
  readonly amount: number;
  readonly unit: string;
  readonly from: Day;
  readonly beforeCoins: number;
  readonly coins: number;
}

export interface Touches {
  readonly touches: readonly PriceTouch[];
  readonly prices: readonly NewPrice[];
}

/** What the prices of the book touch by now; announced ones show at once. */
export function touchesNow(now: Derived): Touches {
  return touchesOn(now, lastPriceDay(now));
}

/**
 * What the prices of a day and the wages of the book do to open quotes, and to what was sold and is not bought yet. A
 * quote past its last day is no longer open.
 */
export function touchesOn(now: Derived, on: Day): Touches {
  const { records, workshop } = now;
  const prices = on === now.today ? now.prices : priceBook(records, { on, oldPriceDays: workshop.oldPriceDays });
  const open = [...records.job.values()].flatMap((job) => {
    const body = openBody(job, now);
    return body ? [{ job, body }] : [];
  });
  return {
    touches: open.flatMap(({ job, body }) => touchOf(job, body, { prices, rate: records.rate })),
    prices: newPrices(
      open.map(({ body }) => body),
      prices,
    ),
  };
}

function openBody(job: Job, { records, today }: Derived): QuoteBody | undefined {
  const { id, state } = job;
  const quote = isBefore(state, 'ordered') ? (soldQuote(records, job) ?? latestQuote(records, id)) : undefined;
  const body = quote && bodyOf(quote);
  return body && isBefore(state, 'accepted') && body.validUntil < today ? undefined : body;
}

/** The last day from which a price in the book holds; today where none is to come. */
function lastPriceDay({ records, today }: Derived): Day {
  let day = today;
  for (const { from } of records.packPrice.values()) if (from > day) day = from;
  return day;
}

interface Asked extends Pick<Records, 'rate'> {
  readonly prices: PriceBook;
}

function touchOf({ id, title, state }: Job, body: QuoteBody, asked: Asked): readonly PriceTouch[] {
  const after = reworkAt(body, asked);
  const { sums } = body;
  if (!after || !isTouched(sums, after)) return [];
  const cost = { from: sums.costCoins, to: after.costCoins };
  return [
    {
      job: id,
      title,
      state,
      quote: `${body.number}${body.revision}`,
      cost,
      net: { from: sums.netCoins, to: after.netCoins },
      margin: { from: sums.netCoins - cost.from, to: sums.netCoins - cost.to },
    },
  ];
}

/** An issued quote at the prices and wages of the book; what has no price there keeps its own. */
function reworkAt(body: QuoteBody, { prices, rate }: Asked): QuoteSums | undefined {
  const parts = partsOf(body);
  const priced = [...prices.goods].filter(([, { fault }]) => !fault);
  const rates = parts.rates.map((each) => rate.get(each.id) ?? each);
  const sums = reworkQuote({ ...parts, rates, goods: new Map([...parts.goods, ...priced]) });
  return sums.ok ? sums.value : undefined;
}

function isTouched(from: Pick<QuoteSums, 'lines' | 'netCoins'>, to: QuoteSums): boolean {
  return from.lines.some((line, at) => line.costCoins !== to.lines[at]?.costCoins) || from.netCoins !== to.netCoins;
}

/** The latest first; packs that several quotes were worked with at one price stand once. */
function newPrices(bodies: readonly QuoteBody[], now: PriceBook): readonly NewPrice[] {
  const found = new Map<string, NewPrice>();
  for (const price of bodies.flatMap((body) => newPricesOf(body, now))) {
    found.set(`${price.pack} ${price.beforeCoins}`, price);
  }
  return [...found.values()].toSorted((one, other) => (one.from === other.from ? 0 : one.from < other.from ? 1 : -1));
}

function newPricesOf({ goods, needs }: QuoteBody, { goods: now }: PriceBook): readonly NewPrice[] {
  const used = new Set(needs.map(({ material }) => material));
  return goods
    .filter(({ material }) => used.has(material))
    .flatMap(({ material, label, unit, packs }) => {
      const asked = new Map(now.get(material)?.packs.map((pack) => [pack.id, pack]));
      return packs.flatMap(({ id: pack, amount, priceCoins: beforeCoins }) => {
        const after = asked.get(pack);
        if (!after || after.priceCoins === beforeCoins) return [];
        const { from, priceCoins: coins } = after;
        return [{ pack, material, label, amount, unit, from, beforeCoins, coins }];
      });
    });
}
