import type { BookColumn } from './book-table.ts';
import { updateRecord } from './put-record.ts';
import { failed } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';
import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';

/** One field of one kind of record: how it is shown, and how what is written becomes part of the record. */
export interface Field<R> {
  readonly key: string;
  readonly title: string;
  readonly unit: string;
  readonly look: 'figure' | 'words';
  readonly width: number;
  readonly show: (record: R) => string;
  readonly entry: (record: R) => string;
  readonly options?: readonly string[];
  readonly read: (text: string, record: R) => Result<R, string>;
}

/** Keys of a record whose field holds a `V`, left out or not. */
export type KeyOf<R, V> = { [K in keyof R]-?: V extends Exclude<R[K], undefined> ? K : never }[keyof R] & string;

export interface Lifted<K extends RecordKind, Row> {
  readonly kind: K;
  readonly recordOf: (row: Row) => RecordOf<K>;
  /** As the label of an edit speaks of the row: "T07". */
  readonly nameOf: (row: Row) => string;
  /** What cannot be of the record as a whole, once the field is in. */
  readonly misfit?: (record: RecordOf<K>) => string | undefined;
}

/** Fields of a record as columns of a table whose rows hold one. */
export function columnsOf<K extends RecordKind, Row>(
  lifted: Lifted<K, Row>,
  fields: readonly Field<RecordOf<K>>[],
): readonly BookColumn<Row>[] {
  return fields.map((field) => columnOf(lifted, field));
}

function columnOf<K extends RecordKind, Row>(lifted: Lifted<K, Row>, field: Field<RecordOf<K>>): BookColumn<Row> {
  const { kind, recordOf, nameOf, misfit } = lifted;
  const { show, entry, read, ...told } = field;
  return {
    ...told,
    show: (row) => show(recordOf(row)),
    entry: (row) => entry(recordOf(row)),
    write: (row, text) => {
      const from = recordOf(row);
      const to = read(text, from);
      if (!to.ok) return to;
      const wrong = misfit?.(to.value);
      if (wrong !== undefined) return failed(wrong);
      return updateRecord(`${field.title.toLowerCase()} of ${nameOf(row)}`, kind, { from, to: to.value });
    },
  };
}
