import type Database from 'better-sqlite3';
import type { BadRecord } from '#shared-calc/records/book-fault.ts';
import { mapKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { type AlteredRow, findLost, selectSummed, sumOf } from './checksums.ts';
import { parseRow } from './row.ts';
import { columnsOf, sqlName } from './tables.ts';

export interface ReadRecords {
  readonly records: Records;
  /** Those that are not as they were last written, and those that are gone. */
  readonly altered: readonly AlteredRow[];
}

/**
 * Every record of the file, in the order in which they were added; every invalid record is named.
 * Call it inside a transaction, so that all tables are read as of one moment.
 */
export function readRecords(db: Database.Database): Result<ReadRecords, readonly BadRecord[]> {
  const bad: BadRecord[] = [];
  const altered: AlteredRow[] = [];
  const records = mapKinds<Records>((kind) => {
    const read = readKind(db, kind, bad);
    altered.push(...read.altered.map((key) => ({ table: sqlName(kind), key })));
    return read.records;
  });
  return bad.length > 0 ? failed(bad) : ok({ records, altered });
}

interface ReadKind {
  readonly records: ReadonlyMap<string, unknown>;
  readonly altered: readonly string[];
}

function readKind(db: Database.Database, kind: RecordKind, bad: BadRecord[]): ReadKind {
  const records = new Map<string, unknown>();
  const altered: string[] = [];
  for (const [key, sum, ...cells] of db.prepare<[], readonly unknown[]>(selectOf(kind)).raw().all()) {
    const record = parseRow(kind, cells);
    if (record.ok) records.set(record.value.id, record.value);
    else bad.push({ kind, id: String(key), issues: record.fault });
    if (sum !== sumOf(cells)) altered.push(String(key));
  }
  return { records, altered: [...altered, ...findLost(db, sqlName(kind), altered)] };
}

function selectOf(kind: RecordKind): string {
  const columns = columnsOf(kind).map(({ field }) => `"${sqlName(field)}"`);
  return selectSummed(sqlName(kind), columns.join(', '));
}
