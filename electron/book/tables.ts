import { fieldsOf } from '#shared-calc/fields/record-fields.ts';
import type { FieldKind } from '#shared-calc/fields/field.ts';
import { allKinds, type RecordKind } from '#shared-calc/records/records.ts';

/** How a field is stored: arrays and objects as JSON text, yes and no as 1 and 0. */
export type ColumnType = 'text' | 'integer' | 'real' | 'yes no' | 'json';

export interface Column {
  readonly field: string;
  readonly type: ColumnType;
  readonly mayBeEmpty: boolean;
}

const columnTypes: Readonly<Record<FieldKind, ColumnType>> = {
  code: 'text',
  words: 'text',
  choice: 'text',
  'yes no': 'yes no',
  day: 'text',
  money: 'integer',
  count: 'integer',
  figure: 'real',
  reference: 'text',
  weekdays: 'json',
  season: 'json',
  data: 'json',
};

const columns: ReadonlyMap<RecordKind, readonly Column[]> = new Map(
  allKinds.map((kind) => [
    kind,
    fieldsOf(kind).map(([field, of]) => ({ field, type: columnTypes[of.kind], mayBeEmpty: of.mayBeEmpty })),
  ]),
);

/** The columns of a kind's table, in the order of a row. */
export function columnsOf(kind: RecordKind): readonly Column[] {
  return columns.get(kind) ?? [];
}

/** `packPrice` is the table `pack_price`, `insideLengthMm` the column `inside_length_mm`. */
export function sqlName(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}
