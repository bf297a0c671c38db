import type Database from 'better-sqlite3';
import type { BadRecord } from '#shared-calc/records/book-fault.ts';
import { mapKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { parseRow } from './row.ts';
import { columnsOf, sqlName } from './tables.ts';

/**
 * Every record of the file, in the order in which they were added; every invalid record is named.
 * Call it inside a transaction, so that all tables are read as of one moment.
 */
export function readRecords(db: Database.Database): Result<Records, readonly BadRecord[]> {
  const bad: BadRecord[] = [];
  const records = mapKinds<Records>((kind) => readKind(db, kind, bad));
  return bad.length > 0 ? failed(bad) : ok(records);
}

function readKind(db: Database.Database, kind: RecordKind, bad: BadRecord[]): ReadonlyMap<string, unknown> {
  const records = new Map<string, unknown>();
  for (const cells of db.prepare<[], readonly unknown[]>(selectOf(kind)).raw().all()) {
    const record = parseRow(kind, cells);
    if (record.ok) records.set(record.value.id, record.value);
    else bad.push({ kind, id: String(cells[0]), issues: record.fault });
  }
  return records;
}

function selectOf(kind: RecordKind): string {
  const columns = columnsOf(kind).map(({ field }) => `"${sqlName(field)}"`);
  return `SELECT ${columns.join(', ')} FROM "${sqlName(kind)}" ORDER BY rowid`;
}
