import { actNames } from '#shared-calc/words/act-names.ts';
import { signal, type Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import type { JobApi } from '#renderer/store/job-api.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { OpenedJob } from '#renderer/kit/opened-job.tsx';
import { LackNote } from '#renderer/kit/lack-note.tsx';
import { Tabs } from '#renderer/kit/tabs.tsx';
import { printAct } from '#renderer/print/print-acts.ts';
import { PaintedQuote } from './painted-quote.tsx';
import { memo } from '#shared-calc/records/memo.ts';
import type { QuoteBody } from '#shared-calc/jobs/quote-body.ts';
import { listMissing } from '#shared-calc/buy/say-missing.ts';
import { WHOLE } from '#shared-calc/papers/quote-part.ts';
import { quoteCsv } from '#shared-calc/papers/quote-csv.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import type { Job } from '#shared-calc/records/records.ts';
import { failed, type Result } from '#shared-calc/result.ts';
import { calledByLines } from '#shared-calc/words/called-by-words.ts';
import { sayOrderFault } from '#shared-calc/words/say-order-fault.ts';
import { AllQuotes } from './all-quotes.tsx';
import { ChangedView } from './changed-view.tsx';
import { IssueDialog } from './issue-dialog.tsx';
import { draftQuote, type DraftQuote } from '#shared-calc/derive/draft-quote.ts';
import { issuedFor, readIssued, revisionName, type ReadQuote } from './issued-quotes.ts';
import { optionsList, OptionsView } from './options-view.tsx';
import { quoteSeals } from './quote-seals.ts';
import { DraftPanel, IssuedPanel } from './quote-panels.tsx';
import { TouchesView } from './touches-view.tsx';
import css from './quotes.module.css';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';

interface QuotesState {
  readonly api: JobApi;
  readonly sealOf: ReturnType<typeof quoteSeals>;
  readonly asking: Signal<boolean>;
  readonly draftOf: (context: BookContext, job: Job) => Result<DraftQuote, string>;
}

/**
 * Quotes: `#/quotes/J02` is a job's draft, `#/quotes/Q-0001A` an issued one, `#/quotes/changed/Q-0001A/Q-0001B`,
 * `#/quotes/options`, `#/quotes/prices` and `#/quotes/all`.
 */
export function quotesPlace(api: JobApi): (route: Route) => PlaceView {
  const draftMemo = memo<Result<DraftQuote, string>>();
  const state: QuotesState = {
    api,
    sealOf: quoteSeals(crypto.subtle),
    asking: signal(false),
    draftOf: (context, job) => draftMemo([context, job], () => draftOf(context, job)),
  };
  return ({ rest }) => {
    const context = contextNow(api);
    return quoteNamed(state, rest, context) ?? leafNamed(state, rest, context);
  };
}

function draftOf(context: BookContext, { id }: Job): Result<DraftQuote, string> {
  const job = context.job(id);
  const draft = job && draftQuote(context, job);
  if (!draft) return failed('');
  if (draft.ok) return draft;
  return failed(
    draft.fault.kind === 'no-sizes'
      ? `${id} has no size yet: take one on the size bench, and its price stands here.`
      : sayOrderFault(draft.fault, calledByLines(job.bench.input())),
  );
}

/** An issued quote, or a comparison of two, if the link names any. */
function quoteNamed(
  state: QuotesState,
  [what = '', one = '', other = '']: Route['rest'],
  context: BookContext,
): PlaceView | undefined {
  const { issuedQuote } = context.records;
  const quote = issuedQuote.get(what);
  if (quote) return issuedView(state, readIssued(quote), context);
  const [from, to] = [issuedQuote.get(one), issuedQuote.get(other)];
  return what === 'changed' && from && to ? changedView(state, [readIssued(from), readIssued(to)], context) : undefined;
}

function leafNamed(state: QuotesState, [what = '', one = '']: Route['rest'], context: BookContext): PlaceView {
  const { job: jobs } = context.records;
  const job = jobs.get(what) ?? jobs.get(one) ?? jobs.get(state.api.job.value ?? '');
  if (what === 'prices') return listView('new prices', context, 'prices', <TouchesView context={context} />);
  if (what === 'all' || !job)
    return listView('all issued', context, 'all', <AllQuotes context={context} sealOf={state.sealOf} />);
  return what === 'options' ? optionsView(job, context) : draftView(state, job, context);
}

const leaves = [
  ['', 'The quote'],
  ['options', 'Options page'],
  ['all', 'All issued'],
  ['prices', 'New prices'],
] as const;

function Leaves({ here }: { readonly here: string }) {
  return (
    <div class={css['tabs']}>
      <Tabs label="Quotes">
        {leaves.map(([id, title]) => (
          <a
            key={id}
            href={id === '' ? writeRoute('quotes') : writeRoute('quotes', id)}
            aria-current={id === here ? 'page' : undefined}
          >
            {title}
          </a>
        ))}
      </Tabs>
    </div>
  );
}

function workOf(here: string, label: string, children: ComponentChildren, isPaper: boolean) {
  return (
    <div class={css['quotesWork']}>
      <Leaves here={here} />
      <ScrollPage look={isPaper ? 'paper' : 'page'} class={isPaper ? undefined : css['tables']} label={label}>
        {children}
      </ScrollPage>
    </div>
  );
}

function listView(aside: string, { records }: BookContext, here: string, children: ComponentChildren): PlaceView {
  const count = records.issuedQuote.size;
  return {
    about: '',
    aside: here === 'all' && count > 0 ? `${count} issued` : aside,
    acts: [],
    work: workOf(here, 'Quotes', children, false),
  };
}

function draftView(state: QuotesState, job: Job, context: BookContext): PlaceView {
  const { api, asking, sealOf } = state;
  const draft = state.draftOf(context, job);
  const none = draft.ok ? '' : draft.fault;
  const acts: readonly PlaceAct[] = draft.ok
    ? [
        csvAct(draft.value.body, `quote draft ${job.id}`, draft.value.sums),
        printAct(window),
        issueAct(draft.value, asking),
      ]
    : [{ label: actNames.issue, main: true, hint: none }];
  return {
    about: jobName(job),
    aside: 'quote in the making',
    acts,
    work: workOf(
      '',
      'The quote as the client reads it',
      <>
        <OpenedJob api={api} job={job.id} />
        {draft.ok ? <Draft draft={draft.value} job={job} context={context} /> : <EmptyNote>{none}</EmptyNote>}
        {asking.value && draft.ok && (
          <IssueDialog
            job={job}
            body={draft.value.body}
            context={context}
            api={api}
            close={() => (asking.value = false)}
          />
        )}
      </>,
      true,
    ),
    sidePanel: (
      <DraftPanel
        job={job}
        body={draft.ok ? draft.value.body : undefined}
        part={draft.ok ? draft.value.sums : WHOLE}
        {...{ context, api, sealOf }}
      />
    ),
  };
}

interface DraftParts {
  readonly draft: DraftQuote;
  readonly job: Job;
  readonly context: BookContext;
}

/** What a draft lacks, then the quote as far as it is known. */
function Draft({ draft: { body, sums, lacks }, job, context: { records, display } }: DraftParts) {
  return (
    <>
      <LackNote jobs={[job.id]} records={records} missing={lacks} />
      <PaintedQuote body={body} display={display} part={sums} />
    </>
  );
}

/** A quote that lacks anything, or rests on a guess, cannot be issued. */
function issueAct({ lacks }: DraftQuote, asking: Signal<boolean>): PlaceAct {
  const label = actNames.issue;
  if (lacks.length > 0) return { label, main: true, hint: listMissing(lacks) };
  return { label, main: true, hint: 'Cannot be undone', run: () => (asking.value = true) };
}

function csvAct({ sums, workshop }: QuoteBody, name: string, part = WHOLE): PlaceAct {
  return { label: actNames.saveCsv, run: () => downloadCsv(name, quoteCsv(sums, workshop, { inside: false, part })) };
}

function issuedView(state: QuotesState, read: ReadQuote, context: BookContext): PlaceView {
  const { quote, body } = read;
  const name = revisionName(quote);
  return {
    about: body?.job ? jobName(body.job) : name,
    aside: `issued as ${name}`,
    acts: body ? [csvAct(body, `quote ${name}`), { ...printAct(window), main: true }] : [],
    work: workOf(
      'issued',
      'The quote as it was issued',
      body ? (
        <PaintedQuote body={body} display={displayOf(body.workshop)} />
      ) : (
        <EmptyNote>This quote cannot be read any more: what was kept of it has been altered.</EmptyNote>
      ),
      true,
    ),
    sidePanel: <IssuedPanel of={read} context={context} sealOf={state.sealOf} />,
  };
}

function changedView(state: QuotesState, [from, to]: readonly [ReadQuote, ReadQuote], context: BookContext): PlaceView {
  const quotes = to.quote.job === undefined ? [from, to] : issuedFor(context.records, to.quote.job);
  return {
    about: `${revisionName(from.quote)} to ${revisionName(to.quote)}`,
    aside: 'what changed',
    acts: [
      { label: `Back to ${revisionName(to.quote)}`, run: () => (location.hash = writeRoute('quotes', to.quote.id)) },
    ],
    work: workOf(
      'changed',
      'What changed',
      <ChangedView from={from} to={to} quotes={quotes} context={context} />,
      false,
    ),
    sidePanel: <IssuedPanel of={to} context={context} sealOf={state.sealOf} />,
  };
}

function optionsView(job: Job, context: BookContext): PlaceView {
  return {
    about: jobName(job),
    aside: 'sizes to choose from',
    acts: [
      {
        label: actNames.saveCsv,
        run: () => downloadCsv(`options ${job.id}`, optionsList({ job, context })),
      },
      { ...printAct(window), main: true },
    ],
    work: workOf(
      'options',
      'The options page as the client reads it',
      <OptionsView job={job} context={context} />,
      true,
    ),
  };
}
