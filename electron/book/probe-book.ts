import { copyFileSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import Database from 'better-sqlite3';
import { z } from 'zod';

import type { BookFault, Damage } from '#shared-calc/records/book-fault.ts';
import { failed } from '#shared-calc/result.ts';
import type { Result } from '#shared-calc/result.ts';

import { readHeader } from './header.ts';
import { newestVersion } from './migrate.ts';
import type { Migration } from './migrations/migration.ts';
import { freshSchema, readSchema, schemaDifferences } from './schema.ts';
import { storing } from './storage-fault.ts';

const tellAtMost = 5;
const lockWaitMs = 400;

/** Judges a file before anything opens it for writing; the file and what lies beside it stay as they are. */
export function probeBook(
  path: string,
  migrations: readonly Migration[],
): Result<{ readonly version: number }, BookFault> {
  const header = readHeader(path, newestVersion(migrations));
  if (!header.ok) return header;
  return storing(() => {
    const damage = findDamage(path, migrations, header.value.version);
    return damage ? failed({ kind: 'damaged', damage }) : header;
  });
}

/*
 * A connection to a file with a write-ahead log leaves files beside it even when it only reads. So a file that
 * rests is judged from a copy in memory; one whose log waits to be taken in (the program was killed) from a copy of
 * both; one that another program has open, which has its files beside it already, in place.
 */
function findDamage(path: string, migrations: readonly Migration[], version: number): Damage | undefined {
  const log = statSync(`${path}-wal`, { throwIfNoEntry: false });
  if (log && existsSync(`${path}-shm`)) return judge(openInPlace(path), migrations, version);
  if (log && log.size > 0) return judgeCopy(path, migrations, version);
  return judge(openInMemory(path), migrations, version);
}

function openInPlace(path: string): Database.Database {
  return new Database(path, { readonly: true, fileMustExist: true, timeout: lockWaitMs });
}

function openInMemory(path: string): Database.Database {
  const bytes = readFileSync(path);
  // A book in memory cannot have a log: bytes 18 and 19 say whether it has one.
  bytes.fill(1, 18, 20);
  return new Database(bytes, { readonly: true });
}

function judgeCopy(path: string, migrations: readonly Migration[], version: number): Damage | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-'));
  try {
    const copy = join(folder, 'book');
    copyFileSync(path, copy);
    copyFileSync(`${path}-wal`, `${copy}-wal`);
    return judge(new Database(copy), migrations, version);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function judge(db: Database.Database, migrations: readonly Migration[], version: number): Damage | undefined {
  try {
    const says = z.array(z.string()).parse(db.prepare(`PRAGMA quick_check(${tellAtMost})`).pluck().all());
    if (says.join() !== 'ok') return { what: 'pages', says };
    return wrongTables(db, migrations, version);
  } finally {
    db.close();
  }
}

function wrongTables(db: Database.Database, migrations: readonly Migration[], version: number): Damage | undefined {
  const actual = z.int().parse(db.pragma('user_version', { simple: true }));
  if (actual > migrations.length) return undefined;
  const names = schemaDifferences(readSchema(db), freshSchema(migrations, Math.max(actual, version)));
  return names.length > 0 ? { what: 'tables', names } : undefined;
}
