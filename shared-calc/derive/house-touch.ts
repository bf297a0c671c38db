import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import { changesOf, withChange, worksOtherwise } from '#shared-calc/jobs/house-changes.ts';
import { latestQuote } from '#shared-calc/jobs/issue-quote.ts';
import { partsOf, reworkQuote, type QuoteParts } from '#shared-calc/jobs/rework-quote.ts';
import { bodyOf, holdsFor, soldRecipes } from '#shared-calc/jobs/sold-house.ts';
import { frozenHouses, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { QuoteSums } from '#shared-calc/price/quote-sums.ts';
import type { HouseChange, Job, Line } from '#shared-calc/records/records.ts';
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
    const changes = [...soldRecipes(quote)]
      .flatMap((recipe) => changesOf(records, recipe))
      .filter(
        ({ id, inForceOn, before, after }) =>
          inForceOn !== undefined && !known.has(id) && worksOtherwise(before, after),
      );
    return changes.length === 0 ? [] : [{ job, quote: quote.id, changes, sums: moved(body, changes) }];
  });
}

/** The inputs of a quote with changes of its recipes, for each of its tanks. */
function inHouses(parts: QuoteParts, body: QuoteBody, changes: readonly HouseChange[]): QuoteParts {
  const houses = frozenHouses(body);
  const known = new Map<string, Line[]>();
  const next = (lines: readonly Line[], tank?: string): Line[] => {
    const at = houses.findIndex((house) => house.lines === lines);
    const own = changes.filter((change) => change.recipe === houses[at]?.recipe.id && holdsFor(change, tank));
    const key = [at, ...own.map(({ id }) => id)].join('\n');
    const made = known.get(key) ?? [...own.reduce(withChange, lines)];
    known.set(key, made);
    return made;
  };
  const usual = next(parts.lines);
  return {
    ...parts,
    lines: usual,
    columns: parts.columns.map((column) => {
      const { lines = parts.lines, ...rest } = column;
      const own = next(lines, column.tank.id);
      return own === usual ? rest : { ...rest, lines: own };
    }),
  };
}

function moved(body: QuoteBody, changes: readonly HouseChange[]): HouseTouch['sums'] {
  const parts = partsOf(body);
  const [from, to] = [reworkQuote(parts), reworkQuote(inHouses(parts, body, changes))];
  if (!from.ok) return from;
  if (!to.ok) return to;
  const pair = (of: (sums: QuoteSums) => number) => ({ from: of(from.value), to: of(to.value) });
  return { ok: true, value: { cost: pair(({ costCoins }) => costCoins), net: pair(({ netCoins }) => netCoins) } };
}
