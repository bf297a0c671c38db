import { contextNow, type BookContext } from '#renderer/books/book-api.ts';
import { bookPlace } from '#renderer/books/book-place.tsx';
import { downloadCsv } from '#renderer/files/download-csv.ts';
import { pickText } from '#renderer/files/pick-text.ts';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import type { MenuPart } from '#renderer/kit/menu-list.tsx';
import { ScrollPage } from '#renderer/kit/scroll-page.tsx';
import { listedPrices, priceListCsv } from '#shared-calc/papers/price-list-csv.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import { ListHead } from './list-head.tsx';
import { importList, type ListState } from './list-state.ts';
import { listTable } from './list-table.ts';
import { RowPanel } from './row-panel.tsx';
import { SourcePart } from './source-part.tsx';

/** Price lists as suppliers send them: matched once, looked at row by row, taken as one edit. */
export function priceListsPlace(state: ListState): (route: Route) => PlaceView {
  const { api } = state;
  const rows = bookPlace({
    api,
    table: listTable(state.rows),
    above: () =>
      state.matching.value && <ListHead state={state} matching={state.matching.value} context={contextNow(api)} />,
    sidePanel: (shown, context) => <RowPanel shown={shown} state={state} context={context} />,
    written: state.written,
    menu: (chosen) => rowMenu(state, chosen),
    whenEmpty: 'No such rows.',
  });
  return (route) => {
    const context = contextNow(api);
    const acts = placeActs(state, context);
    if (state.matching.value) return { ...rows(route), acts };
    const work = (
      <ScrollPage>
        <SourcePart state={state} context={context} />
      </ScrollPage>
    );
    return { about: '', aside: '', acts, work };
  };
}

function placeActs(state: ListState, context: BookContext): readonly PlaceAct[] {
  const { api, take } = state;
  const { records } = context;
  const supplier = records.supplier.get(state.supplier.value);
  const prices = listedPrices(records, context.today, supplier?.id);
  const name = supplier ? `prices of ${supplier.name || supplier.id}` : 'prices';
  const save: PlaceAct = {
    label: actNames.saveCsv,
    ...(prices.length === 0
      ? { hint: 'No price is in the book yet.' }
      : {
          hint: "The book's own prices, as they come in again",
          run: () => downloadCsv(name, priceListCsv(prices, records)),
        }),
  };
  const choose = { label: actNames.chooseFile, run: () => pickText(document, take, api.refuse) };
  return state.matching.value ? [save, choose, importAct(state, context)] : [save];
}

function importAct(state: ListState, context: BookContext): PlaceAct {
  const act = { label: actNames.importPrices, main: true };
  const read = state.read(context);
  if (!read?.ok) return { ...act, hint: 'The list cannot be read yet.' };
  if (state.supplier.value === '') return { ...act, hint: 'Say whose list it is.' };
  const isNew = read.value.placed.taken.some(({ isThere }) => !isThere);
  return isNew ? { ...act, run: () => importList(state) } : { ...act, hint: 'No row gives the book anything new.' };
}

/** Of the chosen rows together. */
function rowMenu(state: ListState, chosen: readonly string[]): readonly MenuPart[] {
  const ids = new Set(chosen);
  const rows = state.allRows(state.api.derived.peek()).filter(({ id }) => ids.has(id));
  const suggested = rows.flatMap(({ row, suggested: goods, choice }) =>
    goods ? [[row.row, { ...choice, material: goods.id }] as const] : [],
  );
  const named = rows.filter(({ row }) => row.label !== '');
  const all = (act: 'new material' | 'leave', some: typeof rows) =>
    state.choose(some.map(({ row, choice }) => [row.row, { ...choice, act }]));
  return [
    ...(suggested.length > 0 ? [{ says: 'Take what is suggested', run: () => state.choose(suggested) }] : []),
    ...(named.length > 0 ? [{ says: 'New material', run: () => all('new material', named) }] : []),
    { says: 'Leave out', run: () => all('leave', rows) },
    { says: 'As the list has it', run: () => state.choose(rows.map(({ row }) => [row.row, {}])) },
  ];
}
