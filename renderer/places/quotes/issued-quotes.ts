import { byIssue } from '#shared-calc/jobs/issue-quote.ts';
import { readQuoteBody, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { IssuedQuote, Records } from '#shared-calc/records/records.ts';

/** An issued quote with its body, where that can still be read. */
export interface ReadQuote {
  readonly quote: IssuedQuote;
  readonly body: QuoteBody | undefined;
}

const read = new WeakMap<IssuedQuote, ReadQuote>();

/** Reads an issued quote; the same record is read once. */
export function readIssued(quote: IssuedQuote): ReadQuote {
  const known = read.get(quote) ?? { quote, body: readQuoteBody(quote.body) };
  read.set(quote, known);
  return known;
}

/** All that was issued, the last first. */
export function issuedLastFirst(records: Pick<Records, 'issuedQuote'>): readonly ReadQuote[] {
  return [...records.issuedQuote.values()].toSorted((one, other) => byIssue(other, one)).map(readIssued);
}

/** What was issued for a job, in order. */
export function issuedFor(records: Pick<Records, 'issuedQuote'>, job: string): readonly ReadQuote[] {
  return [...records.issuedQuote.values()]
    .filter((quote) => quote.job === job)
    .toSorted(byIssue)
    .map(readIssued);
}

/** `Q-0001 A` */
export function revisionName({ number, revision }: Pick<IssuedQuote, 'number' | 'revision'>): string {
  return `${number} ${revision}`;
}
