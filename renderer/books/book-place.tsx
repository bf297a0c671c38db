import { Button } from '#renderer/kit/button.tsx';
import { added, isEmptyChange, type Change } from '#shared-calc/records/change.ts';
import { effect, signal, untracked, type Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { PlaceAct } from '#renderer/frame/frame-view.ts';
import type { FindView, PlaceView } from '#renderer/frame/page-view.ts';
import type { Route } from '#renderer/frame/place-route.ts';
import type { MenuPart } from '#renderer/kit/menu-list.tsx';
import { EmptyNote } from '#renderer/kit/empty-note.tsx';
import { styleNonce } from '#renderer/look/style-nonce.ts';
import type { Arranged } from './arrange.ts';
import { contextNow, type BookContext, type BookApi } from './book-api.ts';
import { bookList } from './book-list.ts';
import { bookGrid, type BookGrid } from './book-grid.ts';
import { Filtering, HiddenRows } from './filtering.tsx';
import { viewActs } from './view-acts.ts';
import type { BookGridActs } from './book-grid-acts.ts';
import { bookModel } from './book-model.ts';
import type { BookRow, BookTable } from './book-table.ts';
import { sayRefused, writeBoxes, type BoxText } from './write-boxes.ts';
import { MutedLine } from '#renderer/kit/muted.tsx';
import { SidePanel } from '#renderer/kit/side-panel.tsx';
import gridLook from '#renderer/grid/grid.module.css';
import css from './book.module.css';

export interface BookPlaceParts<Row extends BookRow> {
  readonly api: BookApi;
  readonly table: BookTable<Row>;
  readonly aside?: string;
  /** Acts of this book alone, shown before those of every book. */
  readonly acts?: readonly PlaceAct[];
  /** Shown over the grid: links to other views, and open dialogs. */
  readonly above?: () => ComponentChildren;
  /** The side panel for the selected row; `go` takes the keyboard to one of its cells. */
  readonly sidePanel?: (row: Row, context: BookContext, go: (column: string) => void) => ComponentChildren;
  /** Told of texts that their fields have accepted, where they are kept elsewhere than in the book. */
  readonly written?: (texts: readonly BoxText[]) => void;
  /** More acts of the chosen rows, in the menu. */
  readonly menu?: (rows: readonly string[]) => readonly MenuPart[];
  /** Shown instead of the grid while there is no row. */
  readonly whenEmpty?: string;
}

/** A book as a view of the page: its grid, its acts, and a side panel for the selected row. */
export function bookPlace<Row extends BookRow>(parts: BookPlaceParts<Row>): (route: Route) => PlaceView {
  const { api, table, aside = '', whenEmpty = `There is no ${table.one} here yet.` } = parts;
  const chosen = signal<readonly string[]>([]);
  const grid: { current: BookGrid<Row> | undefined } = { current: undefined };
  const arranged = signal<Arranged<Row> | undefined>(undefined);
  const filtering = signal<string | undefined>(undefined);
  const view = viewActs({ api, table, askFilter: (column) => (filtering.value = column) });
  const acts: BookGridActs = {
    ...gridActs(parts, grid, chosen),
    rowActs: () => rowActs(parts, grid, chosen, acts),
    view,
  };
  return ({ rest }) => {
    const context = contextNow(api);
    const rows = table.rows(context);
    const row = rows.find(({ id }) => id === chosen.value[0]);
    return {
      about: '',
      aside,
      acts: [
        ...(parts.acts ?? []),
        ...placeActs({ table, acts, some: row !== undefined, copy: () => copyRow(parts, grid, row) }),
      ],
      work: (
        <div class={css['work']}>
          {parts.above?.()}
          <HiddenRows arranged={arranged} showAll={view.showAll} />
          <BookSheetView parts={parts} acts={acts} grid={grid} arranged={arranged} start={rest.slice(-2)} />
          <Filtering table={table} context={context} column={filtering} take={view.filter} />
          {rows.length === 0 && <NoRows says={whenEmpty} one={table.one} add={table.add && acts.add} />}
        </div>
      ),
      ...(parts.sidePanel && {
        sidePanel: (
          <RecordPanel one={table.one}>
            {row && parts.sidePanel(row, context, (column) => void grid.current?.go(row.id, column))}
          </RecordPanel>
        ),
      }),
      printed: () => {
        const shown = arranged.peek();
        return shown && bookList({ one: table.one, arranged: shown, workshop: context.workshop });
      },
      find: findView(table, rows, (found) => {
        // What is sought comes out from under the filter.
        if (arranged.peek()?.hidden.some(({ id }) => id === found.id)) view.showAll();
        return grid.current?.go(found.id) === true;
      }),
    };
  };
}

interface Grid<Row extends BookRow> {
  current: BookGrid<Row> | undefined;
}

function gridActs<Row extends BookRow>(
  { api, table, written }: BookPlaceParts<Row>,
  grid: Grid<Row>,
  chosen: { value: readonly string[] },
): Omit<BookGridActs, 'rowActs' | 'view'> {
  const now = () => api.derived.peek();
  return {
    write: (texts) => {
      const done = writeBoxes(table, now(), texts);
      if (!done.ok) return texts.length === 1 ? done.fault[0]?.says : sayRefused(done.fault);
      written?.(texts);
      return putInto(api, done.value);
    },
    refuse: api.refuse,
    choose: (rows) => {
      if (rows.join('\n') !== chosen.value.join('\n')) chosen.value = rows;
    },
    add: () => {
      const made = table.add?.(now());
      if (!made) return;
      putInto(api, made.change);
      grid.current?.write(made.id);
    },
    remove: () => {
      const context = now();
      const rows = table.rows(context).filter(({ id }) => chosen.value.includes(id));
      const done = rows.length === 0 ? undefined : table.remove?.(context, rows);
      if (done && !done.ok) api.refuse(done.fault);
      else if (done) takeOut(api, done.value);
    },
  };
}

/** The acts of the selected rows, as the view's buttons have them. */
function rowActs<Row extends BookRow>(
  parts: BookPlaceParts<Row>,
  grid: Grid<Row>,
  chosen: { readonly value: readonly string[] },
  acts: Pick<BookGridActs, 'add' | 'remove'>,
): readonly MenuPart[] {
  const { table, api } = parts;
  const [first, ...others] = chosen.value;
  const row = table.rows(api.derived.peek()).find(({ id }) => id === first);
  if (!row) return [];
  const many = others.length === 0 ? row.id : `${others.length + 1} ${table.one}s`;
  return [
    ...(table.copy ? [{ says: `Copy ${row.id} as a new ${table.one}`, run: () => copyRow(parts, grid, row) }] : []),
    ...(table.add ? [{ says: `Add a ${table.one}`, keys: 'Insert', run: acts.add }] : []),
    ...(table.remove ? [{ says: `Remove ${many}`, keys: 'Ctrl Delete', run: acts.remove }] : []),
    ...(parts.menu?.(chosen.value) ?? []),
  ];
}

function copyRow<Row extends BookRow>(
  { api, table }: BookPlaceParts<Row>,
  grid: Grid<Row>,
  row: Row | undefined,
): void {
  const made = row && table.copy?.(api.derived.peek(), row);
  if (!made) return;
  putInto(api, made.change);
  grid.current?.write(made.id);
}

/** Makes the change of a table with the matching act. */
function putInto({ doAct }: BookApi, change: Change): string | undefined {
  if (isEmptyChange(change)) return undefined;
  const { label, added: made, updated } = change;
  return doAct('putAll', { label, records: [...made, ...updated.map(({ kind, to }) => added(kind, to))] });
}

function takeOut({ doAct }: BookApi, { label, removed }: Change): void {
  doAct('removeAll', { label, records: removed.map(({ kind, record }) => ({ kind, id: record.id })) });
}

interface ActParts<Row extends BookRow> {
  readonly table: BookTable<Row>;
  readonly acts: BookGridActs;
  readonly some: boolean;
  readonly copy: () => void;
}

function placeActs<Row extends BookRow>({ table, acts, some, copy }: ActParts<Row>): readonly PlaceAct[] {
  const none = `Choose a ${table.one} first.`;
  return [
    ...(table.remove
      ? [some ? { label: 'Remove', hint: 'Ctrl and Delete', run: acts.remove } : { label: 'Remove', hint: none }]
      : []),
    ...(table.copy ? [some ? { label: 'Copy', run: copy } : { label: 'Copy', hint: none }] : []),
    ...(table.add ? [{ label: `Add a ${table.one}`, main: true, hint: 'Insert', run: acts.add }] : []),
  ];
}

function findView<Row extends BookRow>(
  { one, nameOf }: BookTable<Row>,
  rows: readonly Row[],
  go: (row: Row) => boolean,
): FindView {
  const label = `Find a ${one}`;
  return {
    label,
    placeholder: label,
    options: rows.map(nameOf),
    go: (words) => {
      const found = findRow(rows, nameOf, words);
      return found !== undefined && go(found);
    },
  };
}

function findRow<Row extends BookRow>(
  rows: readonly Row[],
  nameOf: (row: Row) => string,
  words: string,
): Row | undefined {
  const wanted = words.toLowerCase();
  return (
    rows.find((row) => [row.id, nameOf(row)].some((name) => name.toLowerCase() === wanted)) ??
    rows.find((row) => nameOf(row).toLowerCase().includes(wanted))
  );
}

interface NoRowsParts {
  readonly says: string;
  readonly one: string;
  readonly add: (() => void) | undefined;
}

/** Instead of the rows of an empty book. */
function NoRows({ says, one, add }: NoRowsParts) {
  return (
    <div class={css['noRows']}>
      <EmptyNote>
        {says}{' '}
        {add && (
          <Button look="plain" onClick={add}>
            Add the first {one}
          </Button>
        )}
      </EmptyNote>
    </div>
  );
}

interface SheetParts<Row extends BookRow> {
  readonly parts: BookPlaceParts<Row>;
  readonly acts: BookGridActs;
  readonly grid: Grid<Row>;
  readonly arranged: Signal<Arranged<Row> | undefined>;
  /** The row that the link names, or the row and the column. */
  readonly start: readonly string[];
}

function BookSheetView<Row extends BookRow>({ parts: { api, table }, acts, grid, arranged, start }: SheetParts<Row>) {
  const host = useRef<HTMLDivElement>(null);
  // In the layout effect: the first row takes the focus, and must not take it back after it has moved elsewhere.
  useLayoutEffect(() => {
    if (!host.current) return undefined;
    const model = bookModel(table, api.derived.peek());
    const nonce = styleNonce(document);
    const made = bookGrid({ host: host.current, nonce, label: table.label, model, acts });
    grid.current = made;
    const follow = effect(() => {
      const next = bookModel(table, contextNow(api), arranged.peek());
      untracked(() => {
        arranged.value = next.arranged;
        made.show(next);
      });
    });
    const [one = '', other] = start;
    const isThere = (other !== undefined && made.go(one, other)) || made.go(other ?? one);
    if (!isThere) made.go(model.rows[0]?.key ?? '', table.firstColumn);
    return () => {
      follow();
      arranged.value = undefined;
      grid.current = undefined;
      made.destroy();
    };
  }, []);
  return <div ref={host} class={`${gridLook['grid']} ${css['grid']}`} />;
}

function RecordPanel({ one, children }: { readonly one: string; readonly children: ComponentChildren }) {
  return (
    <SidePanel label={`About the chosen ${one}`}>
      {children ?? <MutedLine>Choose a {one} to see more of it.</MutedLine>}
    </SidePanel>
  );
}
