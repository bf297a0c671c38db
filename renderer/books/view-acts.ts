import type { HeadActs } from '#renderer/grid/listen-on-heads.ts';
import type { MenuPart } from '#renderer/kit/menu-list.tsx';
import { added } from '#shared-calc/records/change.ts';
import type { TableView } from '#shared-calc/records/records.ts';
import { actNames } from '#shared-calc/words/act-names.ts';
import type { BookApi } from './book-api.ts';
import type { BookColumn, BookRow, BookTable } from './book-table.ts';
import {
  filteredBy,
  freshView,
  inOrder,
  movedBy,
  nextSort,
  sortedBy,
  unfiltered,
  withHidden,
  withWidth,
} from './change-view.ts';

/** What is done to the view of a table; each is one edit of the book. */
export interface ViewActs extends HeadActs {
  readonly ordered: (columns: readonly string[]) => void;
  readonly filter: (filter: TableView['filters'][number]) => void;
  readonly showAll: () => void;
  readonly columnMenu: (column: string) => { readonly label: string; readonly acts: readonly MenuPart[] } | undefined;
}

interface ViewActsParts<Row extends BookRow> {
  readonly api: Pick<BookApi, 'derived' | 'doAct'>;
  readonly table: BookTable<Row>;
  /** Asks for the filter of a column. */
  readonly askFilter: (column: string) => void;
}

/** A step of the menu: wider and narrower, rem. */
const STEP = 2;

export function viewActs<Row extends BookRow>({ api, table, askFilter }: ViewActsParts<Row>): ViewActs {
  const columns = () => table.columns(api.derived.peek());
  const viewNow = () => api.derived.peek().records.tableView.get(table.view) ?? freshView(table.view);
  const titleOf = (key: string) => columns().find((column) => column.key === key)?.title ?? key;
  const change = (says: string, to: TableView) =>
    void api.doAct('putAll', { label: `${table.one}s: ${says}`, records: [added('tableView', to)] });
  const press = (column: string) => {
    const to = nextSort(viewNow(), column);
    change(to.sort ? `sorted by ${titleOf(column)}, ${to.sort.down ? 'down' : 'up'}` : 'in their own order', to);
  };
  const sort = (column: string, down: boolean) =>
    change(`sorted by ${titleOf(column)}, ${down ? 'down' : 'up'}`, sortedBy(viewNow(), { column, down }));
  const setWidth = (key: string, rem: number | undefined) =>
    change(`width of ${titleOf(key)}`, withWidth(viewNow(), columns(), key, rem));
  const acts: Omit<ViewActs, 'columnMenu'> = {
    press,
    move: (key, by) => change(`${titleOf(key)} moved`, movedBy(viewNow(), columns(), key, by)),
    width: (key, px) => setWidth(key, px / remNow()),
    ordered: (keys) => change('columns in another order', inOrder(viewNow(), columns(), keys.slice(1))),
    filter: (filter) => change(`filter on ${titleOf(filter.column)}`, filteredBy(viewNow(), filter)),
    showAll: () => change('without a filter', unfiltered(viewNow())),
  };
  const hide = (key: string, hidden: boolean) =>
    change(`${titleOf(key)} ${hidden ? 'hidden' : 'shown'}`, withHidden(viewNow(), columns(), key, hidden));
  return {
    ...acts,
    columnMenu: (key) => {
      const view = viewNow();
      const column = columns().find((each) => each.key === key);
      if (!column) return undefined;
      return {
        label: column.title,
        acts: [
          ...sortParts(view, key, { sort, own: () => change('in their own order', sortedBy(view, undefined)) }),
          'line',
          { says: `${actNames.filter} …`, run: () => askFilter(key) },
          ...(view.filters.length > 0 ? [{ says: actNames.showAll, run: acts.showAll }] : []),
          ...(column === columns()[0] ? [] : shapeParts({ key, view, column, acts, setWidth, hide })),
          ...hiddenParts(view, columns(), hide),
        ],
      };
    },
  };
}

interface SortActs {
  readonly sort: (column: string, down: boolean) => void;
  readonly own: () => void;
}

function sortParts({ sort: now }: TableView, column: string, { sort, own }: SortActs): readonly MenuPart[] {
  const by = (down: boolean) => now?.column === column && now.down === down;
  return [
    { says: 'Sort up', on: by(false), run: () => sort(column, false) },
    { says: 'Sort down', on: by(true), run: () => sort(column, true) },
    { says: "The book's own order", on: now === undefined, run: own },
  ];
}

interface ShapeParts {
  readonly key: string;
  readonly view: TableView;
  readonly column: Pick<BookColumn<never>, 'width'>;
  readonly acts: Pick<ViewActs, 'move'>;
  readonly setWidth: (key: string, rem: number | undefined) => void;
  readonly hide: (key: string, hidden: boolean) => void;
}

function shapeParts({ key, view, column, acts, setWidth, hide }: ShapeParts): readonly MenuPart[] {
  const now = view.columns.find((each) => each.key === key)?.widthRem ?? column.width;
  return [
    'line',
    { says: 'Wider', run: () => setWidth(key, now + STEP) },
    { says: 'Narrower', run: () => setWidth(key, now - STEP) },
    { says: 'Usual width', run: now === column.width ? undefined : () => setWidth(key, undefined) },
    { says: 'Move to the left', keys: 'Alt Shift Left', run: () => acts.move(key, -1) },
    { says: 'Move to the right', keys: 'Alt Shift Right', run: () => acts.move(key, 1) },
    { says: 'Hide this column', run: () => hide(key, true) },
  ];
}

function hiddenParts<Row>(
  view: TableView,
  columns: readonly BookColumn<Row>[],
  hide: (key: string, hidden: boolean) => void,
): readonly MenuPart[] {
  const hidden = new Set(view.columns.flatMap(({ key, hidden: is = false }) => (is ? [key] : [])));
  const shown = columns.filter(({ key }) => hidden.has(key));
  if (shown.length === 0) return [];
  return ['line', ...shown.map(({ key, title }) => ({ says: `Show ${title}`, run: () => hide(key, false) }))];
}

/** Pixels per rem. */
export function remNow(): number {
  return Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
}
