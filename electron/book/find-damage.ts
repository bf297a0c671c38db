import { copyFileSync, existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { z } from 'zod';
import type { Damage } from '#shared-calc/records/book-fault.ts';
import { findJournalGap } from './journal.ts';
import { guard, lockWaitMs } from './connection.ts';
import { migrations as ownMigrations } from './migrations/all.ts';
import type { Migration } from './migrations/migration.ts';
import { newestSchema } from './newest-schema.ts';
import { storageFaultOf } from './storage-fault.ts';
import { digestOf, freshSchema, readSchema, schemaDifferences } from './schema.ts';

const tellAtMost = 5;

/**
 * Looks for damage in a file with a valid header. Does not change the file or the files next to it. A log that is left
 * from before another file was put in the place of its own makes a sound file look damaged: then it is `foreign log`.
 */
export function findDamage(path: string, migrations: readonly Migration[]): Damage | 'foreign log' | undefined {
  const log = statSync(`${path}-wal`, { throwIfNoEntry: false });
  if (!log) return judge(openAtRest(path), migrations);
  if (log.size === 0) return judge(existsSync(`${path}-shm`) ? openReading(path) : openAtRest(path), migrations);
  const found = existsSync(`${path}-shm`)
    ? judge(openReading(path), migrations, gapIn)
    : judgeCopy(path, migrations, 'log');
  return found && !judgeCopy(path, migrations, 'alone') ? 'foreign log' : found;
}

/*
 * Closing a connection merges the log into the file, which must not happen to a damaged file. A read-only connection
 * does not merge, but leaves log files next to the book. So it is used only if both log files already exist, because
 * another program has the book open or was killed. If only the log exists, a copy is checked. A file without a log has
 * nothing to merge, and the connection that can write removes its own log files.
 */
function openReading(path: string): Database.Database {
  return new Database(path, { readonly: true, fileMustExist: true, timeout: lockWaitMs });
}

function openAtRest(path: string): Database.Database {
  return new Database(path, { fileMustExist: true, timeout: lockWaitMs });
}

function judgeCopy(path: string, migrations: readonly Migration[], what: 'log' | 'alone'): Damage | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-'));
  try {
    const copy = join(folder, 'book');
    copyFileSync(path, copy);
    if (what === 'log') copyFileSync(`${path}-wal`, `${copy}-wal`);
    return judge(new Database(copy), migrations, gapIn);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function judge(
  db: Database.Database,
  migrations: readonly Migration[],
  also: (db: Database.Database) => Damage | undefined = () => undefined,
): Damage | undefined {
  try {
    guard(db);
    // Before anything of its tables is worked: nothing that came with the file is to run.
    const wrong = wrongTables(db, migrations);
    if (wrong) return wrong;
    const says = z.array(z.string()).parse(db.prepare(`PRAGMA quick_check(${tellAtMost})`).pluck().all());
    return says.join() === 'ok' ? also(db) : { what: 'pages', says };
  } catch (error) {
    const fault = storageFaultOf(error);
    if (fault?.kind === 'damaged') return fault.damage;
    throw error;
  } finally {
    db.close();
  }
}

/** A file with the log of another is often sound page by page, but not in its journal. */
function gapIn(db: Database.Database): Damage | undefined {
  const gap = findJournalGap(db);
  return gap && { what: 'journal', revision: gap.revision };
}

function wrongTables(db: Database.Database, migrations: readonly Migration[]): Damage | undefined {
  const version = z.int().parse(db.pragma('user_version', { simple: true }));
  // The version in the log may be newer than the header in the file.
  if (version > migrations.length) return undefined;
  const schema = readSchema(db);
  if (version === ownMigrations.length && migrations === ownMigrations && digestOf(schema) === newestSchema) return;
  const names = schemaDifferences(schema, freshSchema(migrations, version));
  return names.length > 0 ? { what: 'tables', names } : undefined;
}
