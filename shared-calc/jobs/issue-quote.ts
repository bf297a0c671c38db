import type { Change } from '#shared-calc/records/change.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import type { IssuedQuote, Records } from '#shared-calc/records/records.ts';
import { isBefore } from './move-job.ts';
import { arrived } from './next-act.ts';
import { putRecords } from './put-records.ts';
import { writeQuoteBody, type QuoteBody } from './quote-body.ts';

/** Quotes that nobody was sent: a job that was accepted without one is frozen under such a number. */
const UNSENT = /^S-\d+$/;

export function isUnsent({ number }: Pick<IssuedQuote, 'number'>): boolean {
  return UNSENT.test(number);
}

/** The number that a job's next quote is a revision of; none before the first issue. */
export function quoteNumberOf(records: Pick<Records, 'issuedQuote'>, job: string): string | undefined {
  return latestQuote(records, job)?.number;
}

/** The last revision issued for a job and sent to its client. */
export function latestQuote(records: Pick<Records, 'issuedQuote'>, job: string): IssuedQuote | undefined {
  return [...records.issuedQuote.values()]
    .filter((quote) => quote.job === job && !isUnsent(quote))
    .toSorted(byIssue)
    .at(-1);
}

/** In the order of issue: by number, then by revision, where AA comes after Z. */
export function byIssue(one: IssuedQuote, other: IssuedQuote): number {
  return (
    compare(one.number.length, other.number.length) ||
    compare(one.number, other.number) ||
    compare(one.revision.length, other.revision.length) ||
    compare(one.revision, other.revision)
  );
}

/**
 * The change that issues a quote; `hash` gives the SHA-256 of the stored body in lower-case hexadecimal. A job in an
 * earlier state moves to *quoted*; its answer is due on the last day of the quote.
 */
export function issueQuote(records: Records, body: QuoteBody, hash: (text: string) => string): Change {
  const { number, revision, issuedOn, job } = body;
  const text = writeQuoteBody(body);
  const quote: IssuedQuote = {
    id: `${number}${revision}`,
    ...(job && { job: job.id }),
    number,
    revision,
    issuedOn,
    body: text,
    sha256: hash(text),
  };
  const now = job && records.job.get(job.id);
  const quoted = now && isBefore(now.state, 'quoted') ? [{ ...arrived(now, 'quoted'), nextOn: body.validUntil }] : [];
  const label = job ? `quote ${number} ${revision} of ${job.id} issued` : `quote ${number} ${revision} issued`;
  return diffRecords(label, records, {
    ...records,
    job: putRecords(records.job, quoted),
    issuedQuote: putRecords(records.issuedQuote, [quote]),
  });
}

function compare(one: string | number, other: string | number): number {
  if (one === other) return 0;
  return one < other ? -1 : 1;
}
