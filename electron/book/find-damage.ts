import { copyFileSync, existsSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { z } from 'zod';
import type { Damage } from '#shared-calc/records/book-fault.ts';
import { lockWaitMs } from './connection.ts';
import type { Migration } from './migrations/migration.ts';
import { freshSchema, readSchema, schemaDifferences } from './schema.ts';

const tellAtMost = 5;

/** Looks for damage in a file with a valid header. Does not change the file or the files next to it. */
export function findDamage(path: string, migrations: readonly Migration[]): Damage | undefined {
  const log = statSync(`${path}-wal`, { throwIfNoEntry: false });
  if (log && existsSync(`${path}-shm`)) return judge(openReading(path), migrations);
  if (log && log.size > 0) return judgeCopy(path, migrations);
  return judge(openAtRest(path), migrations);
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

function judgeCopy(path: string, migrations: readonly Migration[]): Damage | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-'));
  try {
    const copy = join(folder, 'book');
    copyFileSync(path, copy);
    copyFileSync(`${path}-wal`, `${copy}-wal`);
    return judge(new Database(copy), migrations);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

function judge(db: Database.Database, migrations: readonly Migration[]): Damage | undefined {
  try {
    const says = z.array(z.string()).parse(db.prepare(`PRAGMA quick_check(${tellAtMost})`).pluck().all());
    if (says.join() !== 'ok') return { what: 'pages', says };
    return wrongTables(db, migrations);
  } finally {
    db.close();
  }
}

function wrongTables(db: Database.Database, migrations: readonly Migration[]): Damage | undefined {
  const version = z.int().parse(db.pragma('user_version', { simple: true }));
  // The version in the log may be newer than the header in the file.
  if (version > migrations.length) return undefined;
  const names = schemaDifferences(readSchema(db), freshSchema(migrations, version));
  return names.length > 0 ? { what: 'tables', names } : undefined;
}
