import { orderSums } from '#shared-calc/bench/order-sums.ts';
import type { Day } from '#shared-calc/calendar/day.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { Job, Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

/** The quote of a job as it would be issued on a day; it has no number yet. */
export function draftQuote(records: Records, job: Job, on: Day): Result<QuoteBody, string> {
  const open = openJob(records, job, on);
  const keys = keysOf(open.sheet);
  const sums = orderSums(open.bench, keys, open.pricing);
  const body = sums.ok ? freezeQuote(records, open, sums.value, { number: '', revision: '', issuedOn: on }) : undefined;
  if (keys.length === 0)
    return failed(`${job.id} has no size yet: take one on the size bench, and its price stands here.`);
  if (!sums.ok) return failed(sayOrderFault(sums.fault, calledByLines(open.bench.input())));
  return body ? ok(body) : failed('');
}
