import { existsSync, mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import type Database from 'better-sqlite3';
import type { StorageFault } from '#shared-calc/records/book-fault.ts';
import { addDays, weekdayOf } from '#shared-calc/calendar/day.ts';
import { ok, type Result } from '#shared-calc/result.ts';
import { placeOver, settleFile } from './settle-file.ts';
import { storing } from './storage-fault.ts';

/** Kept are the backups of the last days, the last one of each week and of each month before them. */
const kept = { days: 14, weeks: 8, months: 12 };

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

/**
 * Makes the day's backup, and deletes daily backups that later ones stand for. Backups made before a migration are never
 * deleted. Call it only for a book that is sound and lacks it.
 */
export function backUpForDay(db: Database.Database, bookPath: string, day: string): Result<string, StorageFault> {
  return storing(() => {
    const file = backupFile(bookPath, day);
    writeBackup(db, file);
    const old = superseded(listBackups(bookPath).filter(isDaily));
    for (const each of old) rmSync(each.file, { force: true });
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
  mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
  settleFile(file, (passing) => writeSnapshot(db, passing), placeOver);
}

/** Whether the day's backup is still to be made. */
export function lacksBackup(bookPath: string, day: string): boolean {
  return !existsSync(backupFile(bookPath, day));
}

/** Those that need not be kept, of daily backups with the newest first. */
export function superseded<B extends Pick<Backup, 'day'>>(daily: readonly B[]): readonly B[] {
  const last = (of: (day: string) => string, count: number) =>
    [...Map.groupBy(daily, ({ day }) => of(day)).values()].slice(0, count).flatMap(([newest]) => newest ?? []);
  const stay = new Set([...daily.slice(0, kept.days), ...last(weekOf, kept.weeks), ...last(monthOf, kept.months)]);
  return daily.filter((each) => !stay.has(each));
}

/** The Monday of a day's week. */
function weekOf(day: string): string {
  return addDays(day, 1 - weekdayOf(day));
}

function monthOf(day: string): string {
  return day.slice(0, 7);
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
