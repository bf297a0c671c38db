import type { FieldIssue } from '#shared-calc/records/book-fault.ts';
import { recordKinds } from '#shared-calc/records/records.ts';
import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';
import { failed, ok } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import { parseJson } from './parse-json.ts';
import { readColumn } from './tables/table.ts';
import type { Column, ColumnType } from './tables/table.ts';
import { tables } from './tables/tables.ts';

export type Cell = string | number | null;

/** The fields of a kind with their columns, in the order in which they stand in a row. */
export function columnsOf(kind: RecordKind): readonly (readonly [string, Column])[] {
  return Object.entries(tables[kind].columns);
}

/** A record as the cells of its row. */
export function toRow(kind: RecordKind, record: Readonly<Record<string, unknown>>): readonly Cell[] {
  return columnsOf(kind).map(([field, column]) => toCell(readColumn(column).type, record[field]));
}

/** The cells of a row as a record; what does not fit its kind is named. */
export function parseRow<K extends RecordKind>(
  kind: K,
  cells: readonly unknown[],
): Result<RecordOf<K>, readonly FieldIssue[]> {
  const record: Record<string, unknown> = {};
  for (const [index, [field, column]] of columnsOf(kind).entries()) {
    const cell = cells[index];
    if (cell !== null) record[field] = fromCell(readColumn(column).type, cell);
  }
  return parseRecord(kind, record);
}

/** A record from outside, checked against its kind; a field that is `undefined` is left out. */
export function parseRecord<K extends RecordKind>(
  kind: K,
  record: unknown,
): Result<RecordOf<K>, readonly FieldIssue[]> {
  const read = recordKinds[kind].safeParse(record);
  if (!read.success)
    return failed(read.error.issues.map(({ path, code, message }) => ({ field: path.join('.'), code, says: message })));
  const ill = Object.keys(read.data).find((field) => hasBrokenText(Reflect.get(read.data, field)));
  if (ill !== undefined) return failed([{ field: ill, code: 'broken-text', says: 'half a character' }]);
  return ok(withoutEmpty(read.data) as RecordOf<K>);
}

function withoutEmpty(record: object): object {
  return Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
}

/** Half of a pair of code units has no UTF-8: the file would give back another text than was put in. */
function hasBrokenText(value: unknown): boolean {
  if (typeof value === 'string') return !value.isWellFormed();
  if (typeof value !== 'object' || value === null) return false;
  return Object.entries(value).some(([key, each]) => hasBrokenText(key) || hasBrokenText(each));
}

function toCell(type: ColumnType, value: unknown): Cell {
  if (value === undefined) return null;
  if (type === 'json') return JSON.stringify(value);
  if (type === 'yes no') return value === true ? 1 : 0;
  return value as string | number;
}

function fromCell(type: ColumnType, cell: unknown): unknown {
  if (type === 'yes no') return cell === 1;
  return type === 'json' ? parseJson(cell) : cell;
}
