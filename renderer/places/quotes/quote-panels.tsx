import type { BookContext } from '#renderer/books/book-api.ts';
import { ChoiceField } from '#renderer/kit/field.tsx';
import { writeRoute } from '#renderer/frame/place-route.ts';
import { Link } from '#renderer/kit/link.tsx';
import { SoldAs } from '#renderer/books/sold-as.tsx';
import type { JobApi } from '#renderer/store/job-api.ts';
import { paperDay } from '#shared-calc/papers/paper-words.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import type { QuotePart } from '#shared-calc/papers/quote-part.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { issuedFor, revisionName, type ReadQuote } from './issued-quotes.ts';
import { MoneyPart } from './money-part.tsx';
import { OneOffs } from './one-offs.tsx';
import type { quoteSeals } from './quote-seals.ts';
import { Revisions } from './revisions.tsx';
import { SealSign } from './seal-sign.tsx';
import css from './quotes.module.css';
import { PanelHead, SidePanel } from '#renderer/kit/side-panel.tsx';
import { Standing } from '#renderer/kit/standing.tsx';
import { Hint } from '#renderer/kit/note.tsx';

interface PanelParts {
  readonly context: BookContext;
  readonly sealOf: ReturnType<typeof quoteSeals>;
}

interface DraftPanelParts extends PanelParts {
  readonly job: Job;
  /** Absent while it cannot be computed. */
  readonly body: QuoteBody | undefined;
  readonly part: QuotePart;
  readonly api: JobApi;
}

const bases = [
  { value: 'used', label: 'used: only what goes in' },
  { value: 'packs', label: 'packs: every pack bought' },
];

/** The side panel of a draft quote: what it costs us, and what can be added to it. */
export function DraftPanel({ job, body, part, context, api, sealOf }: DraftPanelParts) {
  const choose = (basis: string) =>
    void api.doAct('writeJob', { job: job.id, fields: { basis: basis === 'packs' ? 'packs' : 'used' } });
  return (
    <SidePanel label="About the quote, for us alone">
      <PanelHead where={`${job.id}, ${job.state}`} title="Quote in the making" />
      <ChoiceField label="Cost of materials" value={job.basis} options={bases} choose={choose} />
      <SoldAs job={job} context={context} api={api} />
      {body && <MoneyPart body={body} part={part} context={context} />}
      <OneOffs key={job.id} job={job.id} context={context} api={api} />
      <Revisions quotes={issuedFor(context.records, job.id)} here={undefined} sealOf={sealOf} context={context} />
    </SidePanel>
  );
}

/** The side panel of an issued quote: its seal, what it cost us, and the other quotes of its job. */
export function IssuedPanel({ of: { quote, body }, context, sealOf }: PanelParts & { readonly of: ReadQuote }) {
  const seal = sealOf(quote);
  const isOver = body !== undefined && body.validUntil < context.today;
  return (
    <SidePanel label="About the issued quote, for us alone">
      <PanelHead where={`issued ${paperDay(quote.issuedOn, context.display)}`} title={revisionName(quote)}>
        <Standing state={seal.value === 'broken' ? 'stop' : 'issued'}>
          <SealSign seal={seal} />
        </Standing>
        {isOver && (
          <Standing state="watch">
            <span>It held until {paperDay(body.validUntil, context.display)}.</span>
          </Standing>
        )}
      </PanelHead>
      <p>
        <Link href={writeRoute('bench', quote.id)}>The size bench as it stood</Link>
      </p>
      {body && <MoneyPart body={body} context={context} />}
      {quote.job !== undefined && (
        <>
          <Revisions quotes={issuedFor(context.records, quote.job)} here={quote.id} sealOf={sealOf} context={context} />
          <p>
            <Link href={writeRoute('quotes', quote.job)}>The next revision, in the making</Link>
          </p>
        </>
      )}
      {quote.sha256 !== '' && <Seal sum={quote.sha256} />}
    </SidePanel>
  );
}

function Seal({ sum }: { readonly sum: string }) {
  return (
    <div class={css['seal']}>
      <details>
        <summary>Show the check number</summary>
        <Hint>SHA-256 {sum}</Hint>
      </details>
    </div>
  );
}
