import { useEffect, useRef, useState } from 'preact/hooks';
import type { BookContext } from '#renderer/books/book-hands.ts';
import { showCoins } from '#renderer/books/money-field.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { jobName, type MoneyHands } from '#renderer/places/jobs/money-hands.ts';
import { paperDay } from '#renderer/print/paper-words.ts';
import { quoteNumberOf } from '#shared-calc/jobs/issue-quote.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { Job } from '#shared-calc/records/records.ts';

interface SheetParts {
  readonly job: Job;
  readonly body: QuoteBody;
  readonly context: BookContext;
  readonly hands: MoneyHands;
  readonly close: () => void;
}

/** Asks once before a quote is issued: it is the one act that is never taken back. */
export function IssueSheet({ job, body, context: { records, workshop }, hands, close }: SheetParts) {
  const sheet = useRef<HTMLDialogElement>(null);
  const [isBusy, setBusy] = useState(false);
  const [wrong, setWrong] = useState<string>();
  useEffect(() => sheet.current?.showModal(), []);
  const number = quoteNumberOf(records, job.id);
  const money = (coins: number) => `${showCoins(coins, workshop)}\u00a0${workshop.currency}`;
  const issue = async () => {
    setBusy(true);
    const done = await hands.issue(job.id);
    setBusy(false);
    if (!done.ok) return setWrong(done.fault);
    const issued = done.value.change?.added.find(({ kind }) => kind === 'issuedQuote');
    if (issued) location.hash = writeRoute('quotes', issued.record.id);
    sheet.current?.close();
  };
  return (
    <dialog ref={sheet} class="sheet" aria-labelledby="issue-title" onClose={close}>
      <h2 id="issue-title">Issue the quote of {jobName(job)}</h2>
      <p>
        {money(body.sums.grossCoins)} with tax, deposit {money(body.sums.depositCoins)}, holds until{' '}
        {paperDay(body.validUntil)}. It becomes{' '}
        {number === undefined ? 'a quote with a new number, revision A' : `the next revision of ${number}`}.
      </p>
      <p>
        <b>Issuing cannot be undone.</b> Everything it was worked from is kept with it, and it never changes again; the
        number is never used twice.
      </p>
      <p class="rule-fault" role="alert">
        {wrong}
      </p>
      <div class="pair">
        <button class="button" type="button" onClick={() => sheet.current?.close()}>
          Leave it
        </button>
        <button class="button act" type="button" disabled={isBusy} onClick={() => void issue()}>
          Issue
        </button>
      </div>
    </dialog>
  );
}
