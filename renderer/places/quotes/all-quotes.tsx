import type { BookContext } from '#renderer/books/book-hands.ts';
import { showCoins } from '#renderer/books/money-field.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import { issuedLastFirst, revisionName, type ReadQuote } from './issued-quotes.ts';
import type { quoteSeals } from './quote-seals.ts';
import { SealSign } from './seal-sign.tsx';

interface AllParts {
  readonly context: BookContext;
  readonly sealOf: ReturnType<typeof quoteSeals>;
}

/** Every quote that was ever issued, the last first. */
export function AllQuotes({ context, sealOf }: AllParts) {
  const { records, workshop } = context;
  const quotes = issuedLastFirst(records);
  if (quotes.length === 0)
    return <EmptyNote>No quote has been issued yet. Open a job, and its quote stands here.</EmptyNote>;
  return (
    <table class="ledger">
      <thead>
        <tr>
          <th scope="col">Quote</th>
          <th scope="col">Job</th>
          <th scope="col">Client</th>
          <th scope="col">Issued</th>
          <th scope="col">Holds until</th>
          <th scope="col" class="n">
            Price, {workshop.currency}
          </th>
          <th scope="col">Seal</th>
        </tr>
      </thead>
      <tbody>
        {quotes.map((read) => (
          <QuoteRow key={read.quote.id} read={read} context={context} sealOf={sealOf} />
        ))}
      </tbody>
    </table>
  );
}

function QuoteRow({
  read: { quote, body },
  context: { records, workshop, today },
  sealOf,
}: AllParts & { readonly read: ReadQuote }) {
  const job = records.job.get(quote.job ?? '') ?? body?.job;
  return (
    <tr>
      <th scope="row">
        <a class="row-link" href={writeRoute('quotes', quote.id)}>
          {revisionName(quote)}
        </a>
      </th>
      <td>{job && jobName(job)}</td>
      <td>{body?.job?.client}</td>
      <td>{paperDay(quote.issuedOn)}</td>
      <td>
        <HoldsUntil day={body?.validUntil} today={today} />
      </td>
      <td class="n">{body && showCoins(body.sums.grossCoins, workshop)}</td>
      <td>
        <SealSign seal={sealOf(quote)} />
      </td>
    </tr>
  );
}

function HoldsUntil({ day, today }: { readonly day: string | undefined; readonly today: string }) {
  if (day === undefined) return null;
  return (
    <>
      {paperDay(day)}
      {day < today && <span class="aside">, past</span>}
    </>
  );
}
