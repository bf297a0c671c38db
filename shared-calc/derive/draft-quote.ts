import type { KnownSums, OrderFault } from '#shared-calc/bench/order-sums.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Derived, DerivedJob } from './derived.ts';

export type DraftFault = OrderFault | { readonly kind: 'no-sizes'; readonly job: string };

/** A quote that has no number yet. While anything is missing, or a guess, it cannot be issued. */
export interface DraftQuote {
  readonly body: QuoteBody;
  readonly sums: KnownSums;
}

/** The quote of a job as it would be issued today, as far as it is known. */
export function draftQuote({ records, today }: Derived, job: DerivedJob): Result<DraftQuote, DraftFault> {
  if (job.keys.length === 0) return failed({ kind: 'no-sizes', job: job.job.id });
  const sums = job.known();
  if (!sums.ok) return sums;
  const body = freezeQuote(records, job, sums.value, { number: '', revision: '', issuedOn: today });
  return ok({ body, sums: sums.value });
}
