import type { ListCell, ListColumn, ListPaper } from '#renderer/print/list-paper.ts';
import { letterheadOf } from '#shared-calc/papers/letterhead-of.ts';
import type { Workshop } from '#shared-calc/records/records.ts';
import type { Arranged } from './arrange.ts';
import type { BookColumn, BookRow } from './book-table.ts';

interface BookListParts<Row extends BookRow> {
  readonly one: string;
  readonly arranged: Arranged<Row>;
  readonly workshop: Workshop;
}

/** A book as its grid shows it: the rows and columns of its view, in their order. */
export function bookList<Row extends BookRow>({ one, arranged, workshop }: BookListParts<Row>): ListPaper {
  const { rows, columns, hidden } = arranged;
  const [first, second] = columns;
  // A name beside the code, so that a further sheet can be read.
  const heads = columns.slice(0, second?.look === 'words' ? 2 : 1);
  const byKey = new Map(columns.map((column) => [column.key, column]));
  const isWorked = (column: BookColumn<Row>) => column.write === undefined && column !== first;
  return {
    letterhead: letterheadOf(workshop),
    notes: [
      ...(columns.some(isWorked) ? ['Figures under “worked” are worked by the program; the others are given.'] : []),
      ...(hidden.length === 0 ? [] : [`${countWords(hidden.length, one)} left out by a filter.`]),
    ],
    names: heads.map((column) => listColumn(column)),
    columns: columns.slice(heads.length).map((column) => listColumn(column, isWorked(column))),
    groups: [
      {
        key: 'rows',
        rows: rows.map((row) => ({ key: row.id, cellOf: (key) => listCell(row, byKey.get(key)) })),
      },
    ],
  };
}

function countWords(count: number, one: string): string {
  return count === 1 ? `1 ${one} is` : `${count} ${one}s are`;
}

function listColumn<Row>({ key, title, unit, look }: BookColumn<Row>, isWorked = false): ListColumn {
  return {
    key,
    head: unit === '' ? title : `${title}, ${unit}`,
    ...(isWorked && { under: ['worked'] }),
    figure: look === 'figure',
  };
}

function listCell<Row>(row: Row, column: BookColumn<Row> | undefined): ListCell {
  const aside = column?.flag?.(row)?.says;
  return { text: column?.show(row) ?? '', ...(aside !== undefined && { aside }) };
}
