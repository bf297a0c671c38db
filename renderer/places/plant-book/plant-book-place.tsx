import type { BookApi } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { recordTable } from '#renderer/books/record-table.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';

/** Plants by class, with their light, growth and cost. */
export function plantBookPlace(api: BookApi): (route: Route) => PlaceView {
  return bookPlace({ api, table: plantTable, aside: 'chosen for a job by class, light and who may touch them' });
}

export const plantTable = recordTable<'plant'>({
  kind: 'plant',
  label: 'Plant book, one plant a row',
  one: 'plant',
  letters: 'P',
  widths: { name: 17, harm: 8 },
  wordsOf: ({ name }) => name,
});
