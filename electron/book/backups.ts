import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import type Database from 'better-sqlite3';
import type { StorageFault } from '#shared-calc/records/book-fault.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { placeOver, settleFile } from './settle-file.ts';
import { storing } from './storage-fault.ts';

/** Number of daily backups that are kept. Backups made before a migration are never deleted. */
export const daysMemo = 14;

export interface Backup {
  readonly file: string;
  /** `YYYY-MM-DD` */
  readonly day: string;
  /** The book's version, if the backup was made before a migration. */
  readonly beforeMigrationFrom: number | undefined;
  readonly bytes: number;
}

/** The backups of a book, newest first. */
export function listBackups(bookPath: string): readonly Backup[] {
  const folder = backupFolder(bookPath);
  if (!statSync(folder, { throwIfNoEntry: false })?.isDirectory()) return [];
  return readdirSync(folder)
    .flatMap((name) => readName(bookPath, folder, name))
    .sort((one, other) => (one.file < other.file ? 1 : -1));
}

/** Makes the day's backup if there is none yet, and deletes daily backups beyond the limit. */
export function backUpForDay(
  db: Database.Database,
  bookPath: string,
  day: string,
): Result<string | undefined, StorageFault> {
  return storing(() => {
    const file = backupFile(bookPath, day);
    if (existsSync(file)) return ok(undefined);
    writeBackup(db, file);
    for (const old of listBackups(bookPath).filter(isDaily).slice(daysMemo)) rmSync(old.file, { force: true });
    return ok(file);
  });
}

export function backUpBeforeMigration(
  db: Database.Database,
  bookPath: string,
  { day, version }: { readonly day: string; readonly version: number },
): Result<string, StorageFault> {
  return storing(() => {
    const file = backupFile(bookPath, `${day} version ${version}`);
    writeBackup(db, file);
    return ok(file);
  });
}

/** Copies an open book as it is now into one file. */
export function writeSnapshot(db: Database.Database, file: string): Result<undefined, never> {
  db.prepare('VACUUM INTO ?').run(file);
  return ok(undefined);
}

function writeBackup(db: Database.Database, file: string): void {
  mkdirSync(dirname(file), { recursive: true });
  settleFile(file, (passing) => writeSnapshot(db, passing), placeOver);
}

function isDaily({ beforeMigrationFrom }: Backup): boolean {
  return beforeMigrationFrom === undefined;
}

function backupFolder(bookPath: string): string {
  return join(dirname(bookPath), `${nameOf(bookPath)} backups`);
}

function backupFile(bookPath: string, what: string): string {
  return join(backupFolder(bookPath), `${nameOf(bookPath)} ${what}${extname(bookPath)}`);
}

function nameOf(bookPath: string): string {
  return basename(bookPath, extname(bookPath));
}

function readName(bookPath: string, folder: string, name: string): readonly Backup[] {
  const [start, end] = [`${nameOf(bookPath)} `, extname(bookPath)];
  if (!name.startsWith(start) || !name.endsWith(end)) return [];
  const parts = /^(\d{4}-\d{2}-\d{2})(?: version (\d+))?$/.exec(name.slice(start.length, name.length - end.length));
  if (!parts?.[1]) return [];
  const file = join(folder, name);
  const version = parts[2] === undefined ? undefined : Number(parts[2]);
  return [{ file, day: parts[1], beforeMigrationFrom: version, bytes: statSync(file).size }];
}
