import type { BookContext } from '#renderer/books/book-api.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Link } from '#renderer/kit/link.tsx';
import { Hint } from '#renderer/kit/note.tsx';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import type { ReadQuote } from './issued-quotes.ts';
import { revisionName } from './issued-quotes.ts';
import type { quoteSeals } from './quote-seals.ts';
import { SealSign } from './seal-sign.tsx';
import css from './quotes.module.css';

interface RevisionsParts {
  readonly quotes: readonly ReadQuote[];
  /** The one that is shown. */
  readonly here: string | undefined;
  readonly sealOf: ReturnType<typeof quoteSeals>;
  readonly context: BookContext;
}

/** The quotes issued for the job, each with its seal, and what changed from one to the next. */
export function Revisions({ quotes, here, sealOf, context: { workshop, display } }: RevisionsParts) {
  return (
    <section>
      <h3>Issued</h3>
      {quotes.length === 0 && <Hint>Nothing has been issued for this job yet.</Hint>}
      <ul class={css['revisions']}>
        {quotes.map(({ quote, body }, at) => {
          const before = quotes[at - 1];
          return (
            <li key={quote.id}>
              <Link href={writeRoute('quotes', quote.id)} open={quote.id === here}>
                {revisionName(quote)}
              </Link>
              <span>
                {paperDay(quote.issuedOn, display)}
                {body && `, ${showCoins(body.sums.grossCoins, workshop)} ${workshop.currency}`}
              </span>
              <SealSign seal={sealOf(quote)} />
              {before && (
                <Link href={writeRoute('quotes', 'changed', before.quote.id, quote.id)}>
                  What changed since {before.quote.revision}
                </Link>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
