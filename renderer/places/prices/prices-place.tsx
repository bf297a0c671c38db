import { Fragment } from 'preact';
import { contextNow, type BookApi, type BookContext } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { PriceList } from '#renderer/books/price-list.tsx';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { PanelHead } from '#renderer/kit/side-panel.tsx';
import { Tabs } from '#renderer/kit/tabs.tsx';
import { lackedBy } from '#shared-calc/derive/start-list.ts';
import { jobName } from '#shared-calc/jobs/find-job.ts';
import { atLeast, sayPart } from '#shared-calc/papers/quote-part.ts';
import { showCoins } from '#shared-calc/quantity/coins-text.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { priceTable, type PriceRow } from './price-rows.ts';

/** Missing prices as one grid: `#/prices` over the workshop, `#/prices/J01` of a job, `#/prices/J01/J02` of several. */
export function pricesPlace(api: BookApi & { readonly job: { readonly value: string | undefined } }) {
  let shown: Route | undefined;
  let visit = 0;
  let place: (route: Route) => PlaceView = () => ({ about: '', aside: '', acts: [], work: null });
  return (route: Route): PlaceView => {
    if (route !== shown) {
      shown = route;
      visit += 1;
      const jobs = route.rest.filter((each) => api.records.peek().job.has(each));
      place = tablePlace(api, jobs);
    }
    const view = place(route);
    return { ...view, work: <Fragment key={visit}>{view.work}</Fragment> };
  };
}

function tablePlace(api: Parameters<typeof pricesPlace>[0], jobs: readonly string[]): (route: Route) => PlaceView {
  const table = priceTable(jobs);
  const view = bookPlace({
    api,
    table,
    above: () => <Scope jobs={jobs} open={api.job.value} context={contextNow(api)} />,
    sidePanel: (row, context) => <PricePanel row={row} context={context} api={api} />,
    whenEmpty:
      api.records.peek().size.size === 0
        ? 'No job has a size yet: which prices are missing is known with the first.'
        : 'No price is missing, and none is a guess.',
  });
  return (route) => {
    const context = contextNow(api);
    return {
      ...view(route),
      aside: asideOf(jobs, context),
      acts: [...quoteActs(jobs, context), ...confirmActs(table.rows(context), api)],
    };
  };
}

/** What the jobs come to so far. */
function asideOf(jobs: readonly string[], { job, workshop }: BookContext): string {
  const [only, ...others] = jobs;
  const known = only === undefined || others.length > 0 ? undefined : job(only)?.known();
  if (!known?.ok) return 'most money at stake first';
  const price = `${showCoins(known.value.quote.grossCoins, workshop)}\u00a0${workshop.currency}`.trimEnd();
  return [atLeast(price, known.value), sayPart(known.value)].filter((words) => words !== '').join('; ');
}

/** Once nothing is missing, the way to the quote. */
function quoteActs(jobs: readonly string[], context: BookContext): readonly PlaceAct[] {
  return jobs
    .filter((job) => lackedBy(context, job)?.length === 0)
    .map((job) => ({
      label: jobs.length === 1 ? 'See the quote' : `See the quote of ${job}`,
      main: true,
      hint: 'Nothing is missing any more',
      run: () => (location.hash = writeRoute('quotes', job)),
    }));
}

function confirmActs(rows: readonly PriceRow[], api: BookApi): readonly PlaceAct[] {
  const materials = rows.flatMap(({ material, price }) => (price?.guess ? [material] : []));
  if (materials.length === 0) return [];
  const label = `${actNames.confirmPrices}: all ${materials.length}`;
  return [{ label, hint: 'They were asked of their suppliers', run: () => api.doAct('confirmPrices', { materials }) }];
}

interface ScopeParts {
  readonly jobs: readonly string[];
  readonly open: string | undefined;
  readonly context: BookContext;
}

/** The open job, what was asked for, or the whole workshop. */
function Scope({ jobs, open, context: { records } }: ScopeParts) {
  const asked = jobs.join();
  const one = records.job.get(open ?? '');
  const others = jobs.length > 0 && asked !== one?.id;
  return (
    <Tabs label="Prices of">
      {one && (
        <a href={writeRoute('prices', one.id)} aria-current={asked === one.id ? 'page' : undefined}>
          {jobName(one)}
        </a>
      )}
      {others && (
        <a href={writeRoute('prices', ...jobs)} aria-current="page">
          {jobs.join(', ')}
        </a>
      )}
      <a href={writeRoute('prices')} aria-current={jobs.length === 0 ? 'page' : undefined}>
        The whole workshop
      </a>
    </Tabs>
  );
}

interface PanelParts {
  readonly row: PriceRow;
  readonly context: BookContext;
  readonly api: BookApi;
}

/** The prices of the chosen material's pack, and who waits for one. */
function PricePanel({ row: { material, label, unit, pack, price, jobs }, context, api }: PanelParts) {
  return (
    <>
      <PanelHead where={material} title={label} />
      {jobs.length > 0 && <p>Needed for {jobs.join(', ')}.</p>}
      {price?.guess && (
        <section>
          <h3>A guess</h3>
          <p>No quote is issued with it. Ask the supplier, then write the price, or say that it holds.</p>
          <Buttons>
            <Button onClick={() => api.doAct('confirmPrices', { materials: [material] })}>
              {actNames.confirmPrices}
            </Button>
          </Buttons>
        </section>
      )}
      <section>
        <h3>Prices</h3>
        {pack ? (
          <PriceList pack={pack} of={material} context={context} api={api} />
        ) : (
          <MutedLine>
            {unit === 'each'
              ? 'It is bought by the piece: write in the grid what one costs.'
              : 'It has no pack yet: write in the grid how much one holds.'}
          </MutedLine>
        )}
      </section>
    </>
  );
}
