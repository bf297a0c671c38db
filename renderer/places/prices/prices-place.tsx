import { contextNow, type BookApi, type BookContext } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { JobScope, overJobs, quoteActs, soFar, type JobsApi } from '#renderer/books/over-jobs.tsx';
import { PriceList } from '#renderer/books/price-list.tsx';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { Button, Buttons } from '#renderer/kit/button.tsx';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { PanelHead } from '#renderer/kit/side-panel.tsx';
import { actNames } from '#shared-calc/words/act-names.ts';
import { priceTable, type PriceRow } from './price-rows.ts';

/** Missing prices as one grid: `#/prices` over the workshop, `#/prices/J01` of a job, `#/prices/J01/J02` of several. */
export function pricesPlace(api: JobsApi): (route: Route) => PlaceView {
  return overJobs(api, (jobs) => tablePlace(api, jobs));
}

function tablePlace(api: JobsApi, jobs: readonly string[]): (route: Route) => PlaceView {
  const table = priceTable(jobs);
  const view = bookPlace({
    api,
    table,
    above: () => (
      <JobScope place="prices" says="Prices of" jobs={jobs} open={api.job.value} context={contextNow(api)} />
    ),
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
      aside: soFar(jobs, context, 'most money at stake first'),
      acts: [...quoteActs(jobs, context), ...confirmActs(table.rows(context), api)],
    };
  };
}

function confirmActs(rows: readonly PriceRow[], api: BookApi): readonly PlaceAct[] {
  const materials = rows.flatMap(({ material, price }) => (price?.guess ? [material] : []));
  if (materials.length === 0) return [];
  const label = `${actNames.confirmPrices}: all ${materials.length}`;
  return [{ label, hint: 'They were asked of their suppliers', run: () => api.doAct('confirmPrices', { materials }) }];
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
