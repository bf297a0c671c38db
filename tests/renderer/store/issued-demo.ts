import { orderSums } from '#shared-calc/bench/order-sums.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { issueQuote } from '#shared-calc/jobs/issue-quote.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { workedJob } from '#tests/worked-job.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';

/** The demo with its first job issued as a quote. */
export function issued(records: Records): Records {
  const job = records.job.get('J01');
  if (!job) throw new Error('no job');
  const open = workedJob(records, job, DEMO_DAY);
  const sums = orderSums(open.bench, keysOf(open.sheet), open.pricing);
  if (!sums.ok) throw new Error(sums.fault.kind);
  const body = freezeQuote(records, open, sums.value, { number: 'Q-0001', revision: 'A', issuedOn: DEMO_DAY });
  return applyChange(
    records,
    issueQuote(records, body, () => '0'.repeat(64)),
  );
}
