import type { OrderFault } from '#shared-calc/bench/order-sums.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { readyToIssue } from '#shared-calc/jobs/ready-to-issue.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Derived, DerivedJob } from './derived.ts';

export type DraftFault = OrderFault | { readonly kind: 'no-sizes'; readonly job: string };

/** The quote of a job as it would be issued today; it has no number yet. */
export function draftQuote({ records, today, workshop }: Derived, job: DerivedJob): Result<QuoteBody, DraftFault> {
  if (job.keys.length === 0) return failed({ kind: 'no-sizes', job: job.job.id });
  const sums = readyToIssue(job.sums(), workshop);
  if (!sums.ok) return sums;
  return ok(freezeQuote(records, job, sums.value, { number: '', revision: '', issuedOn: today }));
}
