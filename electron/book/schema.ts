import Database from 'better-sqlite3';
import { memos } from '#shared-calc/records/memo.ts';
import { applyMigrations } from './migrate.ts';
import type { Migration } from './migrations/migration.ts';

/** The schema stored in the file, by name: tables, indexes and triggers with their SQL. */
export function readSchema(db: Database.Database): ReadonlyMap<string, string> {
  const parts = db
    .prepare<[], [string, string | null]>(
      "SELECT name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' ORDER BY name",
    )
    .raw()
    .all();
  return new Map(parts.map(([name, sql]) => [name, sql ?? '']));
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

/** Names of the objects that are extra, missing or different. */
export function schemaDifferences(
  one: ReadonlyMap<string, string>,
  other: ReadonlyMap<string, string>,
): readonly string[] {
  const names = new Set([...one.keys(), ...other.keys()]);
  return [...names].filter((name) => one.get(name) !== other.get(name));
}
