import type { FieldIssue } from '#shared-calc/records/book-fault.ts';
import type { RecordKind, RecordOf } from '#shared-calc/records/records.ts';
import { parseAs } from '#shared-calc/records/references.ts';
import type { Result } from '#shared-calc/result.ts';
import { parseJson } from './parse-json.ts';
import { columnsOf, type ColumnType } from './tables.ts';

export type Cell = string | number | null;

/** A record as the cells of its row. */
export function toRow(kind: RecordKind, record: Readonly<Record<string, unknown>>): readonly Cell[] {
  return columnsOf(kind).map(({ field, type }) => toCell(type, record[field]));
}

/** The cells of a row as a record; cells that do not fit its kind are named. */
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

function toCell(type: ColumnType, value: unknown): Cell {
  if (value === undefined) return null;
  if (type === 'yes no') return value === true ? 1 : 0;
  if (type !== 'json' && (typeof value === 'string' || typeof value === 'number')) return value;
  return JSON.stringify(value);
}

function fromCell(type: ColumnType, cell: unknown): unknown {
  if (type === 'yes no') return cell === 1;
  return type === 'json' ? parseJson(cell) : cell;
}
