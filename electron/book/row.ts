import type { FieldIssue } from '#shared-calc/records/book-fault.ts';
import { allKinds, type RecordKind, recordKinds, type RecordOf } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { parseJson } from './parse-json.ts';
import { type ColumnType, readColumn } from './tables/table.ts';
import { tables } from './tables/tables.ts';

export type Cell = string | number | null;

interface KindColumn extends ReturnType<typeof readColumn> {
  readonly field: string;
}

const columns = new Map(allKinds.map((kind) => [kind, listColumns(kind)] as const));

function listColumns(kind: RecordKind): readonly KindColumn[] {
  return Object.entries(tables[kind].columns).map(([field, column]) => ({ field, ...readColumn(column) }));
}

/** The fields of a kind with their columns, in the order in which they stand in a row. */
export function columnsOf(kind: RecordKind): readonly KindColumn[] {
  return columns.get(kind) ?? [];
}

/** A record as the cells of its row. */
export function toRow(kind: RecordKind, record: Readonly<Record<string, unknown>>): readonly Cell[] {
  return columnsOf(kind).map(({ field, type }) => toCell(type, record[field]));
}

/** The cells of a row as a record; what does not fit its kind is named. */
export function parseRow<K extends RecordKind>(
  kind: K,
  cells: readonly unknown[],
): Result<RecordOf<K>, readonly FieldIssue[]> {
  const record: Record<string, unknown> = {};
  for (const [index, { field, type }] of columnsOf(kind).entries()) {
    const cell = cells[index];
    if (cell !== null) record[field] = fromCell(type, cell);
  }
  return parseAs(kind, record);
}

/** A record from outside, checked against its kind; a field that is `undefined` is left out. */
export function parseRecord<K extends RecordKind>(
  kind: K,
  record: unknown,
): Result<RecordOf<K>, readonly FieldIssue[]> {
  const read = parseAs(kind, record);
  if (!read.ok) return read;
  const broken = Object.entries(read.value).find(([, value]) => hasBrokenText(value));
  if (broken) return failed([{ field: broken[0], code: 'broken-text', says: 'half a character' }]);
  return ok(withoutEmpty(read.value) as RecordOf<K>);
}

function parseAs<K extends RecordKind>(kind: K, record: unknown): Result<RecordOf<K>, readonly FieldIssue[]> {
  const read = recordKinds[kind].safeParse(record);
  if (read.success) return ok(read.data as RecordOf<K>);
  return failed(read.error.issues.map(({ path, code, message }) => ({ field: path.join('.'), code, says: message })));
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
