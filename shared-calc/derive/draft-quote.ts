import type { KnownSums, OrderFault } from '#shared-calc/bench/order-sums.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { Missing } from '#shared-calc/buy/missing.ts';
import { lacksToIssue } from '#shared-calc/jobs/ready-to-issue.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Derived, DerivedJob } from './derived.ts';

export type DraftFault = OrderFault | { readonly kind: 'no-sizes'; readonly job: string };

/** A quote that has no number yet, as far as it is known. */
export interface DraftQuote {
  readonly body: QuoteBody;
  readonly sums: KnownSums;
  /** Everything that keeps it from being issued; guesses are named beside its sums. */
  readonly lacks: readonly Missing[];
}

/** The quote of a job as it would be issued today. */
export function draftQuote({ records, today, workshop }: Derived, job: DerivedJob): Result<DraftQuote, DraftFault> {
  if (job.keys.length === 0) return failed({ kind: 'no-sizes', job: job.job.id });
  const sums = job.known();
  if (!sums.ok) return sums;
  const body = freezeQuote(records, job, sums.value, { number: '', revision: '', issuedOn: today });
  return ok({ body, sums: sums.value, lacks: lacksToIssue(sums.value, workshop) });
}
