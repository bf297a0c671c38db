import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import { changesOf, withChange, worksOtherwise } from '#shared-calc/jobs/house-changes.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { partsOf, reworkQuote } from '#shared-calc/jobs/rework-quote.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import type { HouseChange, Job } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import type { Derived } from './derived.ts';
import type { FromTo } from './job-effect.ts';

/** An open quote that its house has moved on from. */
export interface HouseTouch {
  readonly job: Job;
  /** `Q-0001A` */
  readonly quote: string;
  /** Changes in force that the quote does not have. */
  readonly changes: readonly HouseChange[];
  /** At the prices of the quote; what cannot be worked is a fault. */
  readonly sums: Result<{ readonly cost: FromTo; readonly net: FromTo }, OrderFault>;
}

/** What the changes of a house since then do to each open quote, on its own goods and prices. */
export function houseTouches({ records, today }: Derived): readonly HouseTouch[] {
  return [...records.job.values()].flatMap((job) => {
    const quote = job.state === 'quoted' ? latestQuote(records, job.id) : undefined;
    const body = quote && bodyOf(quote);
    if (!quote || !body || body.validUntil < today) return [];
    const known = new Set(body.changes);
    const changes = changesOf(records, job.recipe).filter(
      ({ id, inForceOn, before, after }) => inForceOn !== undefined && !known.has(id) && worksOtherwise(before, after),
    );
    return changes.length === 0 ? [] : [{ job, quote: quote.id, changes, sums: moved(body, changes) }];
  });
}

function moved(body: QuoteBody, changes: readonly HouseChange[]): HouseTouch['sums'] {
  const parts = partsOf(body);
  const [from, to] = [
    reworkQuote(parts),
    reworkQuote({ ...parts, lines: [...changes.reduce(withChange, parts.lines)] }),
  ];
  if (!from.ok) return from;
  if (!to.ok) return to;
  const pair = (of: (sums: QuoteSums) => number) => ({ from: of(from.value), to: of(to.value) });
  return { ok: true, value: { cost: pair(({ costCoins }) => costCoins), net: pair(({ netCoins }) => netCoins) } };
}
