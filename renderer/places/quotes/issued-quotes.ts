import { byIssue } from '#shared-calc/jobs/issue-quote.ts';
import { readQuoteBody, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { IssuedQuote, Records } from '#shared-calc/records/records.ts';

/** An issued quote with its body, if the body can still be read. */
export interface ReadQuote {
  readonly quote: IssuedQuote;
  readonly body: QuoteBody | undefined;
}

const read = new WeakMap<IssuedQuote, ReadQuote>();

/** Parses an issued quote; the same record is parsed only once. */
export function readIssued(quote: IssuedQuote): ReadQuote {
  const known = read.get(quote) ?? { quote, body: readQuoteBody(quote.body) };
  read.set(quote, known);
  return known;
}

/** Every issued quote, the last first. */
export function issuedLastFirst(records: Pick<Records, 'issuedQuote'>): readonly ReadQuote[] {
  return [...records.issuedQuote.values()].toSorted((one, other) => byIssue(other, one)).map(readIssued);
}

/** The quotes issued for a job, in order. */
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
