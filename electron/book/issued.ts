import { createHash } from 'node:crypto';
import type { IssuedQuote, Records } from '#shared-calc/records/records.ts';

/** SHA-256 of what a quote was worked from and came to, in small hexadecimal letters. */
export function hashBody(body: string): string {
  return createHash('sha256').update(body, 'utf8').digest('hex');
}

/** Whether an issued quote still says what it said when it was issued. */
export function isAsIssued({ body, sha256 }: Pick<IssuedQuote, 'body' | 'sha256'>): boolean {
  return hashBody(body) === sha256;
}

/** Whether each issued quote still says what it said when it was issued. */
export function verifyIssued(records: Records): readonly { readonly id: string; readonly holds: boolean }[] {
  return [...records.issuedQuote.values()].map((quote) => ({ id: quote.id, holds: isAsIssued(quote) }));
}
