import type { BookApi, BookContext } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import type { BookTable } from '#renderer/books/book-table.ts';
import { packRecords, pieceOf, priceColumns, type PieceRow } from '#renderer/books/piece-price.ts';
import { PriceList } from '#renderer/books/price-list.tsx';
import { insertAfter } from '#renderer/books/record-columns.ts';
import { recordTable, type RecordRow } from '#renderer/books/record-table.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { PanelHead } from '#renderer/kit/side-panel.tsx';

/** Plants by class, with their light, growth and own price. */
export function plantBookPlace(api: BookApi): (route: Route) => PlaceView {
  return bookPlace({
    api,
    table: plantTable,
    aside: 'chosen for a job by class, light and who may touch them',
    sidePanel: (row, context) => <PlantPanel row={row} context={context} api={api} />,
  });
}

/** A plant with its current price. */
type PlantRow = RecordRow<'plant'> & PieceRow;

const plants = recordTable<'plant'>({
  kind: 'plant',
  label: 'Plant book, one plant a row',
  one: 'plant',
  letters: 'P',
  widths: { name: 17, harm: 8 },
  wordsOf: ({ name }) => name,
  owned: packRecords,
});

export const plantTable: BookTable<PlantRow> = {
  ...plants,
  rows: (context) => plants.rows(context).map((row) => ({ ...row, ...pieceOf(row.id, context) })),
  columns: (context) => insertAfter<PlantRow>(plants.columns(context), 'lightHigh', priceColumns(context)),
};

interface PanelParts {
  readonly row: PlantRow;
  readonly context: BookContext;
  readonly api: BookApi;
}

function PlantPanel({ row: { id, record, pack }, context, api }: PanelParts) {
  return (
    <>
      <PanelHead where="Plant book" title={`${id} ${record.name}`.trim()} />
      <section>
        <h3>Prices</h3>
        <PriceList pack={pack} of={id} context={context} api={api} />
      </section>
    </>
  );
}
