import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookApi } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { previewRecords, sayHeadings } from '#renderer/files/import-preview.ts';
import { listImport } from '#renderer/files/list-import.tsx';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { Tabs } from '#renderer/kit/tabs.tsx';
import { importRecords } from '#shared-calc/acts/import-records.ts';
import { closedTable, marginTable, rateTable, supplierTable, taxTable } from './rate-tables.ts';
import { SupplierPanel } from './supplier-panel.tsx';
import css from './rate-book.module.css';

const leaves = [
  { id: 'rates', title: 'Rates' },
  { id: 'margins', title: 'Margins' },
  { id: 'taxes', title: 'Tax classes' },
  { id: 'suppliers', title: 'Suppliers' },
  { id: 'closed-days', title: 'Closed days' },
] as const;

type LeafId = (typeof leaves)[number]['id'];

/** Rates of hours, groups, suppliers and tax, and when the workshop is closed; one tab each. */
export function rateBookPlace(api: BookApi): (route: Route) => PlaceView {
  const list = listImport({
    api,
    list: 'suppliers',
    title: 'Import a list of suppliers',
    needs: sayHeadings('supplier'),
    preview: (text, { records }) => previewRecords(importRecords('supplier', text, records)),
  });
  const above = (here: LeafId) => () => (
    <>
      <Leaves here={here} />
      {here === 'suppliers' && list.dialog()}
    </>
  );
  const places: Readonly<Record<LeafId, (route: Route) => PlaceView>> = {
    rates: bookPlace({ api, table: rateTable, aside: 'hours and kilometres', above: above('rates') }),
    margins: bookPlace({ api, table: marginTable, aside: 'by quote group', above: above('margins') }),
    taxes: bookPlace({ api, table: taxTable, aside: 'worked on the sum of a class', above: above('taxes') }),
    suppliers: bookPlace({
      api,
      table: supplierTable,
      aside: 'carriage, lead and days',
      acts: [{ label: actNames.importList, run: list.open }],
      above: above('suppliers'),
      sidePanel: (row, context) => <SupplierPanel row={row} context={context} api={api} />,
    }),
    'closed-days': bookPlace({ api, table: closedTable, aside: 'no goods and no work', above: above('closed-days') }),
  };
  return (route) => {
    const leaf = leaves.find(({ id }) => id === route.rest[0]) ?? leaves[0];
    const view = places[leaf.id](route);
    return {
      ...view,
      about: leaf.title,
      work: (
        <div key={leaf.id} class={css['leaf']}>
          {view.work}
        </div>
      ),
    };
  };
}

function Leaves({ here }: { readonly here: LeafId }) {
  return (
    <Tabs label="Leaves of the rate book">
      {leaves.map(({ id, title }) => (
        <a key={id} href={writeRoute('rate-book', id)} aria-current={id === here ? 'page' : undefined}>
          {title}
        </a>
      ))}
    </Tabs>
  );
}
