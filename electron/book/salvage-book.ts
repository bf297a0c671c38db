import Database from 'better-sqlite3';
import { z } from 'zod';
import type { BookFault, EditFault, RecordName } from '#shared-calc/records/book-fault.ts';
import { diffRecords } from '#shared-calc/records/diff-records.ts';
import { allKinds, emptyRecords, mapKinds, type RecordKind, type Records } from '#shared-calc/records/records.ts';
import { findLooseReference } from '#shared-calc/records/references.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { listBackups } from './backups.ts';
import type { Book } from './book.ts';
import { createBook } from './create-book.ts';
import { applyMigrations, migrate } from './migrate.ts';
import { migrations } from './migrations/all.ts';
import type { OpenOptions } from './open-options.ts';
import type { UsedNumber } from './quote-numbers.ts';
import { sumOf } from './checksums.ts';
import { type SalvagedRows, salvageRows } from './salvage-rows.ts';
import { isDatabaseError, storing } from './storage-fault.ts';
import { sqlName } from './tables.ts';
import { readRecords } from './read-records.ts';
import { freeName } from './put-aside.ts';
import { readBackup } from './restore.ts';
import { readDemo } from './read-demo.ts';
import type { SeedOptions } from './seed-demo.ts';
import { emptyRecords as withoutFigures } from './own-book.ts';

/** What came of one kind of record. */
export interface SalvagedKind {
  readonly kind: RecordKind;
  readonly came: number;
  /** How many of these were lost in the file and come from the backup. */
  readonly filled: number;
  /** Ids of those that are known to have been there and did not come, or that name what did not come. */
  readonly lost: readonly string[];
  /** Ids of those that came, but not as they were last written. */
  readonly altered: readonly string[];
}

/** What a damaged file still gives. */
export interface Salvage {
  readonly records: Records;
  readonly numbers: readonly UsedNumber[];
  /** Only the kinds of which there was anything. */
  readonly kinds: readonly SalvagedKind[];
  /** Whether the checksums say all that there was; else more may be lost, and what was removed lately may be back. */
  readonly knowsLost: boolean;
}

const Text = z.array(z.string());
const LooseRow = z.object({ table: z.string(), rowid: z.number() });
const Number = z.tuple([z.string(), z.string(), z.string()]);

/**
 * Reads what a damaged file still gives, and fills what is known to be lost from its newest backup. The file is left as
 * it is.
 */
export function readSalvage(path: string, options: SeedOptions): Result<Salvage, BookFault> {
  return storing(() => {
    const found = salvageRows(path, columnsIn);
    const db = new Database(':memory:');
    try {
      const moved = fill(db, found, options.today);
      if (!moved.ok) return moved;
      const own = readWhole(db);
      const records = keepWhole(withWorkshop(withBackup(own, found, path, options), options));
      const numbers = (found.rows.get('quote_number') ?? []).flatMap((row) => usedNumber(row));
      return ok({ records, numbers, kinds: tell(found, own, records), knowsLost: found.knowsAll });
    } finally {
      db.close();
    }
  });
}

/** Writes what a damaged file still gives into a new book beside it, `NAME salvaged DAY`, and opens that. */
export function salvageBook(path: string, options: SeedOptions): Result<Book, BookFault | EditFault> {
  const read = readSalvage(path, options);
  if (!read.ok) return read;
  const { numbers } = read.value;
  const target = freeName(path, `salvaged ${options.today}`);
  for (let { records } = read.value; ;) {
    const begin = diffRecords('what the damaged file gave', emptyRecords, records);
    const made = createBook(target, { ...options, begin, numbers });
    // Of two that say they are the same, one comes from the backup: the other has come in its place.
    if (made.ok || made.fault.kind !== 'there-already') return made;
    records = keepWhole(without(records, [made.fault.record]));
  }
}

/**
 * With the records of the newest backup in the place of those that are lost: of those that are known to be, or of all
 * that are not there where nobody knows.
 */
function withBackup(own: Records, { known, knowsAll }: SalvagedRows, path: string, options: OpenOptions): Records {
  const newest = listBackups(path).find(({ beforeMigrationFrom }) => beforeMigrationFrom === undefined);
  const backup = newest && readBackup(newest.file, options);
  if (!backup?.ok) return own;
  return mapKinds<Records>((kind) => {
    const sums = known.get(sqlName(kind));
    const lost = [...backup.value[kind]].filter(([id]) => !own[kind].has(id) && (!knowsAll || sums?.has(id) === true));
    return new Map<string, unknown>([...own[kind], ...lost]);
  });
}

/** A book has a workshop; a lost one is begun anew, without a figure. */
function withWorkshop(records: Records, { today, demoFolder }: SeedOptions): Records {
  if (records.workshop.size > 0) return records;
  const demo = readDemo(today, demoFolder);
  const begun = demo.ok ? withoutFigures(demo.value) : [];
  const workshop = begun.flatMap((each) => (each.kind === 'workshop' ? [[each.record.id, each.record] as const] : []));
  return { ...records, workshop: new Map(workshop) };
}

/** The form of a file whose header is gone is taken as the newest. */
function versionOf(said: number): number {
  return said >= 1 && said <= migrations.length ? said : migrations.length;
}

/** How many columns each table has in a form of the book. */
function columnsIn(version: number): ReadonlyMap<string, number> {
  const db = new Database(':memory:');
  try {
    applyMigrations(db, migrations.slice(0, versionOf(version)));
    return tableColumns(db);
  } finally {
    db.close();
  }
}

function tableColumns(db: Database.Database): ReadonlyMap<string, number> {
  const tables = Text.parse(db.prepare("SELECT name FROM sqlite_schema WHERE type = 'table'").pluck().all());
  const own = tables.filter((name) => !['journal', 'checksum'].includes(name) && !name.startsWith('sqlite_'));
  const count = db.prepare('SELECT count(*) FROM pragma_table_info(?)').pluck();
  return new Map(own.map((name) => [name, z.int().parse(count.get(name))]));
}

/** Puts the rows into tables of their own form, without those that name what is gone, and brings these forward. */
function fill(db: Database.Database, found: SalvagedRows, day: string): Result<unknown, BookFault> {
  const version = versionOf(found.version);
  applyMigrations(db, migrations.slice(0, version));
  db.pragma('foreign_keys = OFF');
  const columns = tableColumns(db);
  for (const [table, rows] of found.rows) {
    const cells = Array.from({ length: columns.get(table) ?? 0 }, () => '?').join(', ');
    const add = db.prepare(`INSERT OR IGNORE INTO "${table}" VALUES (${cells})`);
    for (const row of rows) insert(add, row);
  }
  // What is brought forward must be whole; what is not, may still be filled from a backup.
  if (version < migrations.length) dropLoose(db);
  return migrate(db, migrations.slice(version), { at: day, day });
}

function insert(add: Database.Statement, row: readonly unknown[]): void {
  try {
    add.run(...row);
  } catch (error) {
    // A row with a cell that its column cannot hold does not come.
    if (!isDatabaseError(error)) throw error;
  }
}

function dropLoose(db: Database.Database): void {
  for (;;) {
    const loose = z.array(LooseRow).parse(db.pragma('foreign_key_check'));
    if (loose.length === 0) return;
    for (const { table, rowid } of loose) db.prepare(`DELETE FROM "${table}" WHERE rowid = ?`).run(rowid);
  }
}

/** Reads the records; those that do not say what their kind can are dropped. */
function readWhole(db: Database.Database): Records {
  for (;;) {
    const read = readRecords(db);
    if (read.ok) return read.value.records;
    for (const { kind, id } of read.fault) db.prepare(`DELETE FROM "${sqlName(kind)}" WHERE id = ?`).run(id);
  }
}

/** Without the records that name one that is not there, until none does. */
function keepWhole(records: Records): Records {
  const loose = allKinds.flatMap((kind) =>
    [...records[kind].values()].flatMap((record): readonly RecordName[] =>
      findLooseReference(records, [{ kind, record }]) ? [{ kind, id: record.id }] : [],
    ),
  );
  if (loose.length === 0) return records;
  return keepWhole(without(records, loose));
}

function without(records: Records, names: readonly RecordName[]): Records {
  const gone = new Set(names.map(({ kind, id }) => `${kind} ${id}`));
  return mapKinds<Records>(
    (kind) => new Map<string, unknown>([...records[kind]].filter(([id]) => !gone.has(`${kind} ${id}`))),
  );
}

function usedNumber(row: readonly unknown[]): readonly UsedNumber[] {
  const read = Number.safeParse(row);
  if (!read.success) return [];
  const [number, revision, sha256] = read.data;
  return [{ number, revision, sha256 }];
}

function tell({ rows, known }: SalvagedRows, own: Records, came: Records): readonly SalvagedKind[] {
  return allKinds.flatMap((kind) => {
    const sums = known.get(sqlName(kind)) ?? new Map<string, number>();
    const read = new Map((rows.get(sqlName(kind)) ?? []).map((row) => [String(row[0]), row]));
    const ids = new Set([...sums.keys(), ...read.keys()]);
    const lost = [...ids].filter((id) => !came[kind].has(id));
    const isAltered = (id: string) => {
      const [sum, row] = [sums.get(id), read.get(id)];
      return sum !== undefined && row !== undefined && sum !== sumOf(row);
    };
    const ownIds = [...came[kind].keys()].filter((id) => own[kind].has(id));
    const filled = came[kind].size - ownIds.length;
    const told = { kind, came: came[kind].size, filled, lost, altered: ownIds.filter(isAltered) };
    return told.came + lost.length > 0 ? [told] : [];
  });
}
