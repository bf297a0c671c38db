import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookApi } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { previewRecords, sayHeadings } from '#renderer/files/import-preview.ts';
import { listImport } from '#renderer/files/list-import.tsx';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import { writeRoute, type Route } from '#renderer/frame/place-route.ts';
import { importRecords } from '#shared-calc/acts/import-records.ts';
import { materialTable } from './material-rows.ts';
import { MaterialPanel } from './material-panel.tsx';

/** Materials with their packs, and the price of a pack from each date. */
export function materialBookPlace(api: BookApi): (route: Route) => PlaceView {
  const list = listImport({
    api,
    list: 'materials',
    title: 'Import a list of materials',
    needs: `${sayHeadings('material')} Packs as 10 L; 45 L.`,
    preview: (text, { records }) => previewRecords(importRecords('material', text, records)),
  });
  return bookPlace({
    api,
    table: materialTable,
    acts: [
      { label: actNames.importList, run: list.open },
      { label: actNames.importPrices, run: () => (location.hash = writeRoute('price-lists')) },
    ],
    above: list.dialog,
    sidePanel: (row, context) => <MaterialPanel row={row} context={context} api={api} />,
  });
}
