import { useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { AskDialog } from '#renderer/kit/ask-dialog.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import type { Reason } from '#shared-calc/acts/reason.ts';
import { againstIssue } from '#shared-calc/derive/against-move.ts';
import { AskedAgainst } from '#renderer/kit/against.tsx';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { quoteNumberOf } from '#shared-calc/jobs/issue-quote.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { Job } from '#shared-calc/records/records.ts';

interface SheetParts {
  readonly job: Job;
  readonly body: QuoteBody;
  readonly context: BookContext;
  readonly api: JobApi;
  readonly close: () => void;
}

/** Asks once before a quote is issued, because this act cannot be undone. */
export function IssueDialog({ job, body, context, api, close }: SheetParts) {
  const { records, workshop, display } = context;
  const [isBusy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string>();
  const [reason, setReason] = useState<Reason>({});
  const worked = context.job(job.id);
  const against = worked ? againstIssue(worked, display) : [];
  const number = quoteNumberOf(records, job.id);
  const money = (coins: number) => `${showCoins(coins, workshop)}\u00a0${workshop.currency}`;
  const issue = async () => {
    setBusy(true);
    const done = await api.issue(job.id, reason);
    setBusy(false);
    setWrong(done.ok ? undefined : done.fault);
    const issued = done.ok ? done.value.change?.added.find(({ kind }) => kind === 'issuedQuote') : undefined;
    if (issued) location.hash = writeRoute('quotes', issued.record.id);
    return done.ok;
  };
  return (
    <AskDialog
      title={`Issue the quote of ${jobName(job)}`}
      does="Issue"
      run={issue}
      wrong={wrong}
      disabled={isBusy}
      close={close}
    >
      {(enter) => (
        <>
          <p>
            {money(body.sums.grossCoins)} with tax, deposit {money(body.sums.depositCoins)}, holds until{' '}
            {paperDay(body.validUntil, display)}. It becomes{' '}
            {number === undefined ? 'a quote with a new number, revision A' : `the next revision of ${number}`}.
          </p>
          <AskedAgainst
            {...{ against, display, reason, records, enter }}
            change={setReason}
            hint="It may be issued without them. A reason and who decides are kept with the job."
          />
          <p>
            <b>Issuing cannot be undone.</b> Everything it was worked from is kept with it, and it never changes again;
            the number is never used twice.
          </p>
        </>
      )}
    </AskDialog>
  );
}
