import { hashBody } from '#electron/book/issued.ts';
import type { Book } from '#electron/book/book.ts';
import type { Step } from '#electron/book/history.ts';
import type { Input, Refusal } from '#shared-calc/contract/channels.ts';
import { issueAnyway, readReason, type Reason } from '#shared-calc/acts/reason.ts';
import { againstIssue } from '#shared-calc/derive/against-move.ts';
import { sayActFault } from '#shared-calc/words/say-act-fault.ts';
import { freezeQuote } from '#shared-calc/jobs/freeze-quote.ts';
import { readyToIssue } from '#shared-calc/jobs/ready-to-issue.ts';
import { issueQuote as issueChange, quoteNumberOf } from '#shared-calc/jobs/issue-quote.ts';
import { derive, type Derived, type DerivedJob } from '#shared-calc/derive/derived.ts';
import type { Result } from '#shared-calc/result.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';

import type { Session } from './session.ts';
import { refuse, refuseBehind } from './refuse.ts';
import { orRefuse, write } from './write-acts.ts';
import type { Written } from './write-acts.ts';

/** Issues a job's next quote from the stored records. Refused if the page shows an older revision. */
export function issueQuote(session: Session, input: Input<'quote.issue'>): Result<Written, Refusal> {
  return write(session, input, (book) => {
    if (book.revision() !== input.onRevision) {
      return refuseBehind('The book was changed in another window meanwhile; look the quote over once more.');
    }
    const derived = derive(book.records(), session.options.today());
    const job = derived.job(input.job);
    return job ? issueOpen(book, derived, { job, reason: input }) : refuseBehind(`There is no job ${input.job}.`);
  });
}

interface Asked {
  readonly job: DerivedJob;
  readonly reason: Reason;
}

function issueOpen(book: Book, derived: Derived, { job, reason: asked }: Asked): Result<Step, Refusal> {
  const { records, today: issuedOn } = derived;
  const { id } = job.job;
  const reason = readReason(records, asked);
  if (!reason.ok) return refuse(sayActFault(reason.fault));
  if (job.keys.length === 0) return refuse(`${id} has no size yet, so there is nothing to quote.`);
  const sums = readyToIssue(job.known(), derived.workshop);
  if (!sums.ok) return refuse(sayOrderFault(sums.fault, calledByLines(job.bench.input())));
  const number = book.nextQuote(quoteNumberOf(records, id));
  const body = freezeQuote(records, job, sums.value, { ...number, issuedOn });
  const against = againstIssue(job, derived.display);
  const change = issueAnyway(records, issueChange(records, body, hashBody), { body, reason: reason.value, against });
  return orRefuse(book.apply(change, book.revision()));
}
