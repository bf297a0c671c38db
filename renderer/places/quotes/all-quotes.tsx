import type { BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { Link } from '#renderer/kit/link.tsx';
import { Table } from '#renderer/kit/table.tsx';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { issuedLastFirst, revisionName, type ReadQuote } from './issued-quotes.ts';
import type { quoteSeals } from './quote-seals.ts';
import { SealSign } from './seal-sign.tsx';
import { Muted } from '#renderer/kit/muted.tsx';

interface AllParts {
  readonly context: BookContext;
  readonly sealOf: ReturnType<typeof quoteSeals>;
}

/** Every quote ever issued, the last first. */
export function AllQuotes({ context, sealOf }: AllParts) {
  const { records, workshop, display } = context;
  const quotes = issuedLastFirst(records);
  if (quotes.length === 0)
    return (
      <EmptyNote>
        No quote has been issued yet. <Link href={writeRoute('jobs')}>Open a job</Link>, and its quote stands here.
      </EmptyNote>
    );
  const nameOf = ({ quote, body }: ReadQuote) => {
    const job = records.job.get(quote.job ?? '') ?? body?.job;
    return job && jobName(job);
  };
  return (
    <Table
      look="ledger"
      label="All quotes"
      rows={quotes}
      keyOf={({ quote }) => quote.id}
      columns={[
        {
          head: 'Quote',
          names: true,
          cell: ({ quote }) => (
            <Link look="row" href={writeRoute('quotes', quote.id)}>
              {revisionName(quote)}
            </Link>
          ),
        },
        { head: 'Job', cell: nameOf },
        { head: 'Client', cell: ({ body }) => body?.job?.client },
        { head: 'Issued', cell: ({ quote }) => paperDay(quote.issuedOn, display) },
        { head: 'Holds until', cell: ({ body }) => <HoldsUntil day={body?.validUntil} context={context} /> },
        {
          head: `Price, ${workshop.currency}`,
          figure: true,
          cell: ({ body }) => body && showCoins(body.sums.grossCoins, workshop),
        },
        { head: 'Seal', cell: ({ quote }) => <SealSign seal={sealOf(quote)} /> },
      ]}
    />
  );
}

function HoldsUntil({
  day,
  context: { today, display },
}: Pick<AllParts, 'context'> & { readonly day: string | undefined }) {
  if (day === undefined) return null;
  return (
    <>
      {paperDay(day, display)}
      {day < today && <Muted>, past</Muted>}
    </>
  );
}
