import { createHash } from 'node:crypto';
import Database from 'better-sqlite3';
import { memos } from '#shared-calc/records/memo.ts';
import { applyMigrations } from './migrate.ts';
import type { Migration } from './migrations/migration.ts';

/**
 * The schema stored in the file, by name: type, table and SQL of every object, whatever it is called. Left out are only
 * the indexes that the database makes by itself for a key of a table; they have no SQL.
 */
export function readSchema(db: Database.Database): ReadonlyMap<string, string> {
  const parts = db
    .prepare<[], [string, string, string, string | null]>('SELECT name, type, tbl_name, sql FROM sqlite_schema')
    .raw()
    .all();
  return new Map(
    parts
      .filter(([, type, , sql]) => type !== 'index' || sql !== null)
      .map(([name, type, table, sql]) => [name, `${type} of ${table}: ${sql ?? ''}`]),
  );
}

const known = memos<ReadonlyMap<string, string>>();

/** The schema of a new book of a version. */
export function freshSchema(migrations: readonly Migration[], version: number): ReadonlyMap<string, string> {
  return known(`${version}`, [migrations], () => makeSchema(migrations, version));
}

function makeSchema(migrations: readonly Migration[], version: number): ReadonlyMap<string, string> {
  const db = new Database(':memory:');
  try {
    applyMigrations(db, migrations.slice(0, version));
    return readSchema(db);
  } finally {
    db.close();
  }
}

/** One text for a whole schema, whatever the order of its objects: SHA-256, in hex. */
export function digestOf(schema: ReadonlyMap<string, string>): string {
  const parts = [...schema].toSorted(([one], [other]) => (one < other ? -1 : 1));
  return createHash('sha256').update(JSON.stringify(parts)).digest('hex');
}

/** Names of the objects that are extra, missing or different. */
export function schemaDifferences(
  one: ReadonlyMap<string, string>,
  other: ReadonlyMap<string, string>,
): readonly string[] {
  const names = new Set([...one.keys(), ...other.keys()]);
  return [...names].filter((name) => one.get(name) !== other.get(name));
}
