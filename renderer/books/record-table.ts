import type { RecordKind, RecordOf, Records } from '#shared-calc/records/records.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { added, type Added, type Change } from '#shared-calc/records/change.ts';
import type { BookContext } from './book-api.ts';
import type { BookColumn, BookRow, BookTable } from './book-table.ts';
import { nextCode } from '#shared-calc/records/next-code.ts';
import { addRecords, removeRecords } from './put-record.ts';
import { recordColumns, type Widths } from './record-columns.ts';
import { freshRecord } from '#shared-calc/records/edit-field.ts';
import { mayGo } from './uses-of.ts';

/** A row that is exactly one record. */
export interface RecordRow<K extends RecordKind> extends BookRow {
  readonly record: RecordOf<K>;
}

export interface RecordTableParts<K extends RecordKind> {
  readonly kind: K;
  readonly label: string;
  readonly one: string;
  /** Prefix of the codes of new rows. */
  readonly letters: string;
  readonly codeWidth?: number;
  readonly widths?: Widths;
  /** The row's name without its code, for finding and messages. */
  readonly wordsOf: (record: RecordOf<K>) => string;
  /** Values of a new record that differ from the defaults of its fields. */
  readonly fresh?: (context: BookContext) => Partial<RecordOf<K>>;
  /** Records that have no meaning without the row's, and go with it. */
  readonly owned?: (records: Records, id: string) => readonly Added[];
  /** Order of the rows; by code if absent. */
  readonly order?: (one: RecordOf<K>, other: RecordOf<K>) => number;
}

/** A book of one kind of record: a record a row, a field a column. */
export function recordTable<K extends RecordKind>(parts: RecordTableParts<K>): BookTable<RecordRow<K>> {
  const { kind, label, one, letters, wordsOf, fresh, order = byCode } = parts;
  const freshId = ({ records }: BookContext) =>
    nextCode(
      letters,
      recordsOf(records, kind).map(({ id }) => id),
    );
  return {
    label,
    one,
    view: kind,
    rows: ({ records }) =>
      recordsOf(records, kind)
        .toSorted(order)
        .map((record) => ({ id: record.id, record })),
    columns: (context) => [
      codeColumn(parts.codeWidth ?? 4),
      ...recordColumns<K, RecordRow<K>>({ ...parts, recordOf: ({ record }) => record }, context),
    ],
    nameOf: ({ id, record }) => `${id} ${wordsOf(record)}`.trim(),
    add: (context) => {
      const id = freshId(context);
      return { id, change: addRecords(`new ${one} ${id}`, [added(kind, freshRecord(kind, id, fresh?.(context)))]) };
    },
    copy: (context, row) => {
      const id = freshId(context);
      return { id, change: addRecords(`${id}, a copy of ${row.id}`, [added(kind, { ...row.record, id })]) };
    },
    remove: ({ records }, rows) => removeUnused(parts, rows, records),
  };
}

/** The code that heads a row. It cannot be edited, because other records refer to it. */
export function codeColumn<Row extends BookRow>(width: number): BookColumn<Row> {
  const codeOf = ({ id }: Row) => id;
  const closed = 'A code stays as it is, for others go by it. Copy the row to have it under another code.';
  return { key: 'id', title: 'Code', unit: '', look: 'words', width, show: codeOf, entry: codeOf, closed };
}

/** All records of a kind. */
export function recordsOf<K extends RecordKind>(records: Records, kind: K): readonly RecordOf<K>[] {
  const table: ReadonlyMap<string, RecordOf<K>> = records[kind];
  return [...table.values()];
}

const codes = new Intl.Collator('en', { numeric: true });

export function byCode(one: BookRow, other: BookRow): number {
  return codes.compare(one.id, other.id);
}

function removeUnused<K extends RecordKind>(
  { kind, owned = () => [] }: RecordTableParts<K>,
  rows: readonly RecordRow<K>[],
  records: Records,
): Result<Change, string> {
  const may = mayGo(
    kind,
    rows.map(({ id }) => id),
    records,
  );
  if (!may.ok) return may;
  return ok(
    removeRecords(
      `${rows.map(({ id }) => id).join(', ')} removed`,
      rows.flatMap(({ id, record }) => [...owned(records, id), added(kind, record)]),
    ),
  );
}
