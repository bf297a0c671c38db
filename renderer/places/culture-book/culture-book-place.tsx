import type { BookApi } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { recordTable } from '#renderer/books/record-table.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';

/** Kinds of culture: how they breed, what a tub holds and yields, and the temperatures they tolerate. */
export function cultureBookPlace(api: BookApi): (route: Route) => PlaceView {
  return bookPlace({ api, table: cultureTable, aside: 'kinds of culture; their tubs stand on the culture board' });
}

export const cultureTable = recordTable<'cultureKind'>({
  kind: 'cultureKind',
  label: 'Culture book, one kind of culture a row',
  one: 'culture',
  letters: 'C',
  widths: { figures: 6, label: 14, breeding: 7 },
  wordsOf: ({ label }) => label,
});
