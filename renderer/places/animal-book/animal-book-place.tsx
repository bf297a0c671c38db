import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookApi } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { recordTable } from '#renderer/books/record-table.ts';
import { previewRecords, sayHeadings } from '#renderer/files/import-preview.ts';
import { listImport } from '#renderer/files/list-import.tsx';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import { importRecords } from '#shared-calc/acts/import-records.ts';
import { AnimalPanel } from './animal-panel.tsx';

/** Kinds of animal: what they stand, the room and food they want, and what they do to plants and people. */
export function animalBookPlace(api: BookApi): (route: Route) => PlaceView {
  const list = listImport({
    api,
    list: 'animals',
    title: 'Import a list of animals',
    needs: `${sayHeadings('animalKind')} Temperatures in °C, or with their unit.`,
    preview: (text, { records }) => previewRecords(importRecords('animalKind', text, records)),
  });
  return bookPlace({
    api,
    table: animalTable,
    aside: 'what is empty is not known yet',
    acts: [{ label: actNames.importList, run: list.open }],
    above: list.dialog,
    sidePanel: ({ record }, context) => <AnimalPanel key={record.id} kind={record} context={context} api={api} />,
    whenEmpty: 'No kind of animal yet: ceiling, floor and humidity are those of the house recipe.',
  });
}

export const animalTable = recordTable<'animalKind'>({
  kind: 'animalKind',
  label: 'Animal book, one kind of animal a row',
  one: 'kind of animal',
  letters: 'A',
  widths: { figures: 5.5, label: 10, prey: 12, harmToPeople: 13, permits: 13, sourceNote: 10, note: 12, vents: 9 },
  wordsOf: ({ label }) => label,
});
