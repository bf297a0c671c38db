import type { Derived } from '#shared-calc/derive/derived.ts';
import { isSoldState } from '#shared-calc/jobs/house-changes.ts';
import { isUnsent } from '#shared-calc/jobs/issue-quote.ts';
import { bodyOf } from '#shared-calc/jobs/sold-house.ts';
import { sayPlainDate } from '#shared-calc/prepare/say-day.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Job } from '#shared-calc/records/records.ts';

type SoldTerms = Pick<Derived, 'records' | 'today' | 'display'>;

/** What a change of a job sells it as: sentences for what is unusual of it. */
export function soldSaid(derived: SoldTerms, change: Change, id: string): readonly string[] {
  const moved = change.updated.flatMap((each) =>
    each.kind === 'job' && each.to.id === id ? [[each.from, each.to] as const] : [],
  );
  return moved.flatMap(([from, to]) => (isSoldState(to.state) ? saidOf(derived, from, to) : []));
}

function saidOf({ records, today, display }: SoldTerms, from: Job, to: Job): readonly string[] {
  const { id, soldAs, state } = to;
  if (soldAs === undefined)
    return [`Nothing is frozen: ${id} has no quote and cannot be priced yet. It follows its house.`];
  if (soldAs === from.soldAs) return [];
  const quote = records.issuedQuote.get(soldAs);
  if (!quote || isUnsent(quote)) return [`${id} is frozen as ${soldAs}, which no client was sent.`];
  const stays = from.state === state ? [`${id} is sold as ${soldAs} now; it stays ${state}.`] : [];
  const until = bodyOf(quote)?.validUntil ?? today;
  return until < today
    ? [...stays, `${soldAs} held until ${sayPlainDate(until, display)}; it is taken all the same.`]
    : stays;
}
