import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookApi } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { listImport } from '#renderer/files/list-import.tsx';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { importRecords } from '#shared-calc/acts/import-records.ts';
import { previewRecords, sayHeadings } from '#renderer/files/import-preview.ts';
import { tankTable } from './tank-rows.ts';
import { TankPanel } from './tank-panel.tsx';

/** Tanks by their inside measurements, each with its price. */
export function tankBookPlace(api: BookApi): (route: Route) => PlaceView {
  const list = listImport({
    api,
    list: 'tanks',
    title: 'Import a list of tanks',
    needs: `${sayHeadings('tank')} Measurements in mm, or with their unit.`,
    preview: (text, { records }) => previewRecords(importRecords('tank', text, records)),
  });
  return bookPlace({
    api,
    table: tankTable,
    aside: 'inside sizes, glass to glass',
    acts: [{ label: actNames.importList, run: list.open }],
    above: list.dialog,
    sidePanel: (row, context, go) => <TankPanel row={row} context={context} api={api} go={go} />,
  });
}
