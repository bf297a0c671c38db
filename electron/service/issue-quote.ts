import { hashBody } from '#electron/book/issued.ts';
import type { Book } from '#electron/book/book.ts';
import type { Step } from '#electron/book/history.ts';
import { orderSums } from '#shared-calc/bench/order-sums.ts';
import type { Input, Refusal } from '#shared-calc/contract/channels.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { issueQuote as issueChange, quoteNumberOf } from '#shared-calc/jobs/issue-quote.ts';
import { keysOf } from '#shared-calc/jobs/job-sheet.ts';
import { openJob } from '#shared-calc/jobs/open-sheet.ts';
import type { WorkedJob } from '#shared-calc/jobs/worked-job.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

import type { Session } from './session.ts';
import { refuse, refuseBehind } from './refuse.ts';
import { orRefuse, write } from './write-acts.ts';
import type { Written } from './write-acts.ts';

/** Issues a job's next quote from what is stored. It is refused where the page shows an older state than that. */
export function issueQuote(session: Session, input: Input<'quote.issue'>): Result<Written, Refusal> {
  return write(session, input, (book) => {
    if (book.revision() !== input.onRevision) {
      return refuseBehind('The book was changed in another window meanwhile; look the quote over once more.');
    }
    const records = book.records();
    const job = records.job.get(input.job);
    if (!job) return refuseBehind(`There is no job ${input.job}.`);
    const open = openJob(records, job, session.options.today());
    const issued = issueOpen(book, records, open, session.options.today());
    return issued;
  });
}

function issueOpen(book: Book, records: Records, open: WorkedJob, issuedOn: string): Result<Step, Refusal> {
  const columns = keysOf(open.sheet);
  const id = open.sheet.job?.id ?? '';
  if (columns.length === 0) return refuse(`${id} has no size yet, so there is nothing to quote.`);
  const sums = orderSums(open.bench, columns, open.pricing);
  if (!sums.ok) return refuse(sayOrderFault(sums.fault, calledByLines(open.bench.input())));
  const number = book.nextQuote(quoteNumberOf(records, id));
  const body = freezeQuote(records, open, sums.value, { ...number, issuedOn });
  return orRefuse(book.apply(issueChange(records, body, hashBody), book.revision()));
}
