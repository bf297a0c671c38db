import Database from 'better-sqlite3';
import { applyMigrations } from './migrate.ts';
import type { Migration } from './migrations/migration.ts';

/** Everything that the file says it is made of, by name: tables, indexes and triggers with their text. */
export function readSchema(db: Database.Database): ReadonlyMap<string, string> {
  const parts = db
    .prepare("SELECT name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite_%' ORDER BY name")
    .raw()
    .all();
  return new Map(parts.map((part) => parseSchemaPart(part)));
}

/** What a book of a version is made of when it is new. */
export function freshSchema(migrations: readonly Migration[], version: number): ReadonlyMap<string, string> {
  const db = new Database(':memory:');
  try {
    applyMigrations(db, migrations.slice(0, version));
    return readSchema(db);
  } finally {
    db.close();
  }
}

/** The names of what is there, missing or different where it should not be. */
export function schemaDifferences(
  one: ReadonlyMap<string, string>,
  other: ReadonlyMap<string, string>,
): readonly string[] {
  const names = new Set([...one.keys(), ...other.keys()]);
  return [...names].filter((name) => one.get(name) !== other.get(name));
}

function parseSchemaPart(part: unknown): readonly [string, string] {
  const [name, sql] = part as [string, string | null];
  return [name, sql ?? ''];
}
