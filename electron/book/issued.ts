import { createHash } from 'node:crypto';
import type { IssuedQuote, Records } from '#shared-calc/records/records.ts';

/** SHA-256 of a quote's inputs and results, in lower-case hexadecimal. */
export function hashBody(body: string): string {
  return createHash('sha256').update(body, 'utf8').digest('hex');
}

/** Whether an issued quote is unchanged since it was issued. */
export function isAsIssued({ body, sha256 }: Pick<IssuedQuote, 'body' | 'sha256'>): boolean {
  return hashBody(body) === sha256;
}

/** Whether each issued quote is unchanged since it was issued. */
export function verifyIssued(records: Records): readonly { readonly id: string; readonly holds: boolean }[] {
  return [...records.issuedQuote.values()].map((quote) => ({ id: quote.id, holds: isAsIssued(quote) }));
}
