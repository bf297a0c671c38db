import { describe, expect, test } from 'vitest';
import { arrangedColumns, arrangedRows, sayHidden } from '#renderer/books/arrange.ts';
import type { BookColumn } from '#renderer/books/book-table.ts';
import {
  filteredBy,
  freshView,
  inOrder,
  movedBy,
  nextSort,
  withHidden,
  withWidth,
} from '#renderer/books/change-view.ts';
import type { TableView } from '#shared-calc/records/records.ts';

interface Row {
  readonly id: string;
  readonly name: string;
  readonly high?: number;
  readonly old?: boolean;
}

const rows: readonly Row[] = [
  { id: 'T1', name: 'Hall', high: 600 },
  { id: 'T2', name: 'attic', high: 90, old: true },
  { id: 'T3', name: 'Hall 2' },
  { id: 'T4', name: 'Hall 10', high: 1200 },
];
const column = (key: string, parts: Partial<BookColumn<Row>>): BookColumn<Row> => ({
  key,
  title: key,
  unit: '',
  look: 'words',
  width: 10,
  show: () => '',
  entry: () => '',
  ...parts,
});
const columns = [
  column('id', { show: ({ id }) => id }),
  column('name', { show: ({ name }) => name }),
  column('high', {
    show: ({ high }) => (high === undefined ? '' : `${high}`),
    rank: ({ high }) => high,
    flag: ({ old }) => (old ? { sign: 'old', look: 'old', says: 'old price' } : undefined),
  }),
];
const fresh = freshView('tank');
const ids = (view: TableView) => arrangedRows(rows, columns, view).rows.map(({ id }) => id);

describe('the rows of a table', () => {
  test.each<[string, TableView, readonly string[]]>([
    ['stand in their own order', fresh, ['T1', 'T2', 'T3', 'T4']],
    [
      'go by their figures, empty ones last',
      { ...fresh, sort: { column: 'high', down: false } },
      ['T2', 'T1', 'T4', 'T3'],
    ],
    ['go down, empty ones still last', { ...fresh, sort: { column: 'high', down: true } }, ['T4', 'T1', 'T2', 'T3']],
    [
      'go by words without their case, numbers in them as numbers',
      { ...fresh, sort: { column: 'name', down: false } },
      ['T2', 'T1', 'T3', 'T4'],
    ],
    ['are those with some words', { ...fresh, filters: [{ column: 'name', has: 'hall' }] }, ['T1', 'T3', 'T4']],
    [
      'are those with one of some words',
      { ...fresh, filters: [{ column: 'name', among: ['attic', 'Hall'] }] },
      ['T1', 'T2'],
    ],
    [
      'are those within bounds; what is not known is not within',
      { ...fresh, filters: [{ column: 'high', least: 90, most: 600 }] },
      ['T1', 'T2'],
    ],
    [
      'meet every filter',
      {
        ...fresh,
        filters: [
          { column: 'high', least: 100 },
          { column: 'name', has: '10' },
        ],
      },
      ['T4'],
    ],
    [
      'are not hidden by a filter on a column that is gone',
      { ...fresh, filters: [{ column: 'gone', has: 'x' }] },
      ['T1', 'T2', 'T3', 'T4'],
    ],
  ])('%s', (_, view, shown) => {
    expect(ids(view)).toEqual(shown);
  });

  test('stay where they are while they are written in; a new one comes last', () => {
    const view: TableView = {
      ...fresh,
      sort: { column: 'high', down: false },
      filters: [{ column: 'name', has: 'hall' }],
    };
    const before = { view, columns, ...arrangedRows(rows, columns, view) };
    const edited = [{ ...rows[0], id: 'T1', name: 'Attic', high: 2000 }, ...rows.slice(1), { id: 'T5', name: 'new' }];
    const after = arrangedRows(edited, columns, view, before);
    expect([after.rows.map(({ id }) => id), after.hidden.map(({ id }) => id)]).toEqual([
      ['T1', 'T4', 'T3', 'T5'],
      ['T2'],
    ]);
  });

  test('what the filter hides is said, and how many of it have a flag', () => {
    const view: TableView = { ...fresh, filters: [{ column: 'name', has: 'hall 2' }] };
    const say = (shown: TableView) => sayHidden({ view: shown, columns, ...arrangedRows(rows, columns, shown) });
    expect([say(view), say({ ...fresh, filters: [{ column: 'high', most: 100 }] }), say(fresh)]).toEqual([
      '3 of 4 are hidden by the filter, 1 of them with a flag: old price',
      '3 of 4 are hidden by the filter',
      undefined,
    ]);
  });
});

describe('the columns of a table', () => {
  const shown = (view: TableView) => arrangedColumns(columns, view).map(({ key, width }) => `${key} ${width}`);

  test('are moved, made wide and hidden; the first stays', () => {
    const moved = movedBy(fresh, columns, 'high', -1);
    const wide = withWidth(moved, columns, 'name', 20);
    const hidden = withHidden(wide, columns, 'high', true);
    expect([shown(fresh), shown(wide), shown(hidden), shown(withHidden(hidden, columns, 'high', false))]).toEqual([
      ['id 10', 'name 10', 'high 10'],
      ['id 10', 'high 10', 'name 20'],
      ['id 10', 'name 20'],
      ['id 10', 'high 10', 'name 20'],
    ]);
  });

  test('are not moved past the ends', () => {
    expect([movedBy(fresh, columns, 'name', -1), movedBy(fresh, columns, 'high', 1)]).toEqual([fresh, fresh]);
  });

  test('keep a hidden one in its place when the others are drawn to another order', () => {
    const hidden = withHidden(fresh, columns, 'name', true);
    expect(inOrder(hidden, columns, ['high']).columns).toEqual([{ key: 'name', hidden: true }, { key: 'high' }]);
  });

  test('a width is never less than can be read, nor taken back to anything but the usual one', () => {
    const narrow = withWidth(fresh, columns, 'name', 0.4);
    expect([shown(narrow)[1], shown(withWidth(narrow, columns, 'name', undefined))[1]]).toEqual(['name 3', 'name 10']);
  });

  test('a column that a newer program has comes last', () => {
    const view = inOrder(fresh, columns, ['high', 'name']);
    expect(arrangedColumns([...columns, column('new', {})], view).map(({ key }) => key)).toEqual([
      'id',
      'high',
      'name',
      'new',
    ]);
  });
});

describe('a heading pressed', () => {
  test('sorts up, then down, then not at all; another begins anew', () => {
    const up = nextSort(fresh, 'high');
    const down = nextSort(up, 'high');
    expect([up.sort, down.sort, nextSort(down, 'high').sort, nextSort(down, 'name').sort]).toEqual([
      { column: 'high', down: false },
      { column: 'high', down: true },
      undefined,
      { column: 'name', down: false },
    ]);
  });
});

test('a filter takes the place of the one on its column; one that asks nothing takes it away', () => {
  const once = filteredBy(fresh, { column: 'high', least: 1 });
  const twice = filteredBy(once, { column: 'high', most: 2 });
  expect([twice.filters, filteredBy(twice, { column: 'high' }).filters]).toEqual([[{ column: 'high', most: 2 }], []]);
});
