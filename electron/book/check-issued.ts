import type { EditFault } from '#shared-calc/records/book-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { IssuedQuote } from '#shared-calc/records/records.ts';
import { isAsIssued } from './issued.ts';
import type { QuoteNumbers } from './quote-numbers.ts';

/** The issued quotes that a change adds. */
export function issuedIn(change: Change): readonly IssuedQuote[] {
  return change.added.flatMap((each) => (each.kind === 'issuedQuote' ? [each.record] : []));
}

/** Finds what a change must not do with issued quotes: alter one, give one a wrong hash, reuse a number. */
export function findIssuedFault(change: Change, numbers: QuoteNumbers): EditFault | undefined {
  const altered = change.updated.find(({ kind }) => kind === 'issuedQuote');
  if (altered) return { kind: 'issued', record: { kind: 'issuedQuote', id: altered.to.id } };
  for (const quote of issuedIn(change)) {
    const fault = quoteFault(quote, numbers);
    if (fault) return fault;
  }
  return undefined;
}

function quoteFault(quote: IssuedQuote, numbers: QuoteNumbers): EditFault | undefined {
  if (!isAsIssued(quote)) {
    return { kind: 'hash-wrong', record: { kind: 'issuedQuote', id: quote.id } };
  }
  // The same quote may return under its number: a removal undone, a backup restored.
  const user = numbers.usedBy(quote);
  if (user === undefined || user === quote.sha256) return undefined;
  return { kind: 'number-used', number: quote.number, revision: quote.revision };
}
