import { readQuoteBody, type QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { didYouMean } from '#shared-calc/rule/did-you-mean.ts';
import { isAsIssued } from '#electron/book/issued.ts';

/** An issued quote by its number and revision: `Q-0001A`. */
export function findIssued({ issuedQuote }: Records, word: string): Result<QuoteBody, string> {
  const quotes = new Map([...issuedQuote.values()].map((quote) => [`${quote.number}${quote.revision}`, quote]));
  const quote = quotes.get(word.toUpperCase());
  if (!quote) return failed(`No issued quote ${word}.${didYouMean(word, quotes.keys())}`);
  if (!isAsIssued(quote)) {
    return failed(`Quote ${word} was altered since it was issued: it no longer says what the client was told.`);
  }
  const body = readQuoteBody(quote.body);
  return body ? ok(body) : failed(`Quote ${word} cannot be read; it was issued by another form of the program.`);
}
