import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';

/** How a field stands in the file: arrays and objects as JSON text, yes and no as 1 and 0, `?` where it may be left out. */
export type ColumnType = 'text' | 'integer' | 'real' | 'yes no' | 'json';
export type Column = ColumnType | `${ColumnType}?`;

type StoredAs<T> = T extends string
  ? 'text'
  : T extends number
    ? 'integer' | 'real'
    : T extends boolean
      ? 'yes no'
      : 'json';
type ColumnOf<T> = undefined extends T ? `${StoredAs<NonNullable<T>>}?` : StoredAs<T>;

export interface Table<K extends RecordKind> {
  readonly columns: { readonly [F in keyof RecordOf<K>]-?: ColumnOf<RecordOf<K>[F]> };
}

export type Tables = { readonly [K in RecordKind]: Table<K> };

/** `packPrice` is the table `pack_price`, `insideLengthMm` the column `inside_length_mm`. */
export function sqlName(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

/** What a column holds, and whether it may be empty. */
export function readColumn(column: Column): { readonly type: ColumnType; readonly mayBeEmpty: boolean } {
  const mayBeEmpty = column.endsWith('?');
  return { type: (mayBeEmpty ? column.slice(0, -1) : column) as ColumnType, mayBeEmpty };
}
