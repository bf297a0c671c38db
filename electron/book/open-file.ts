import { accessSync, constants, existsSync, realpathSync } from 'node:fs';
import { dirname } from 'node:path';
import { z } from 'zod';
import type { BookFault } from '#shared-calc/records/book-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { backUpBeforeMigration } from './backups.ts';
import { bookState, type BookState, dataVersionOf } from './book-state.ts';
import { findAltered } from './checksums.ts';
import { connect, type Connection, isOpenHere } from './connection.ts';
import { filePlace, type FilePlace } from './file-place.ts';
import { findDamage } from './find-damage.ts';
import { judgeVersion, readHeader } from './header.ts';
import { migrate, newestVersion } from './migrate.ts';
import { migrations as ownMigrations } from './migrations/all.ts';
import type { Migration } from './migrations/migration.ts';
import type { OpeningNote, OpenOptions } from './open-options.ts';
import { putLogAside } from './put-aside.ts';
import { codeOf, storing } from './storage-fault.ts';

export interface OpenFile {
  readonly path: string;
  readonly connection: Connection;
  readonly state: BookState;
  readonly place: FilePlace;
  readonly notes: readonly OpeningNote[];
}

/** Opens the file behind a book: checks it, migrates it to the newest version, and reads it once. */
export function openFile(path: string, options: OpenOptions): Result<OpenFile, BookFault> {
  const migrations = options.migrations ?? ownMigrations;
  const there = findFile(path, migrations);
  if (!there.ok) return there;
  return storing(() => {
    const { file, isForeignLog } = there.value;
    const aside = isForeignLog ? putLogAside(file, options.today) : undefined;
    const connection = connect(file);
    const opened = closeIfThrown(connection, () => prepare(connection, file, { ...options, migrations }));
    if (!opened.ok) {
      connection.close();
      return opened;
    }
    if (aside === undefined) return opened;
    return ok({ ...opened.value, notes: [{ kind: 'log-aside', file: aside }, ...opened.value.notes] });
  });
}

interface FoundFile {
  readonly file: string;
  /** Beside it lies the log of another file, which would damage it. */
  readonly isForeignLog: boolean;
}

/** The real file if `path` is a link: the log is next to the real file. */
function findFile(path: string, migrations: readonly Migration[]): Result<FoundFile, BookFault> {
  if (!existsSync(path)) return failed({ kind: 'missing' });
  return storing(() => {
    const file = realpathSync(path);
    if (isOpenHere(file)) return ok({ file, isForeignLog: false });
    const header = readHeader(file, newestVersion(migrations));
    if (!header.ok) return header;
    const closed = findClosedDoor(file);
    if (closed) return failed(closed);
    const damage = findDamage(file, migrations);
    if (damage === undefined || damage === 'foreign log') return ok({ file, isForeignLog: damage !== undefined });
    return failed({ kind: 'damaged', damage });
  });
}

/** Whether file and folder are writable: the log is written next to the book. */
export function findClosedDoor(file: string): BookFault | undefined {
  if (!mayWrite(file)) return { kind: 'read-only', what: 'file' };
  if (!mayWrite(dirname(file))) return { kind: 'read-only', what: 'folder' };
  return undefined;
}

function mayWrite(path: string): boolean {
  try {
    accessSync(path, constants.W_OK);
    return true;
  } catch (error) {
    if (!['EACCES', 'EPERM', 'EROFS'].includes(codeOf(error))) throw error;
    return false;
  }
}

function closeIfThrown<T>(connection: Connection, act: () => T): T {
  try {
    return act();
  } catch (error) {
    connection.close();
    throw error;
  }
}

type Prepared = OpenOptions & { readonly migrations: readonly Migration[] };

function prepare(connection: Connection, path: string, options: Prepared): Result<OpenFile, BookFault> {
  const { db } = connection;
  // Detects a lock or a read-only file before anything is changed; writes nothing.
  db.exec('BEGIN IMMEDIATE; ROLLBACK');
  const notes = bringForward(connection, path, options);
  if (!notes.ok) return notes;
  const place = filePlace(path, dataVersionOf(db));
  const state = bookState(db, place);
  const present = state.present();
  if (!present.ok) return present;
  db.pragma('journal_mode = WAL');
  place.note();
  return ok({ path, connection, state, place, notes: notes.value });
}

/** Migrates if necessary, and only after a backup has been made. */
function bringForward({ db }: Connection, path: string, options: Prepared): Result<readonly OpeningNote[], BookFault> {
  const pragma = (name: string) => z.int().parse(db.pragma(name, { simple: true }));
  // Checked again: the log may hold a newer version than the header in the file.
  const found = judgeVersion(pragma('application_id'), pragma('user_version'), options.migrations.length);
  if (!found.ok) return found;
  const from = found.value.version;
  const due = options.migrations.slice(from);
  if (due.length === 0) return ok([]);
  // A step sums all rows anew, so what is altered is found before it.
  const rows = findAltered(db);
  const altered: readonly OpeningNote[] = rows.length > 0 ? [{ kind: 'altered', rows }] : [];
  const backup =
    options.backups === false ? ok(undefined) : backUpBeforeMigration(db, path, { day: options.today, version: from });
  if (!backup.ok) return backup;
  const moved = migrate(db, due, { at: (options.now ?? clock)(), day: options.today });
  if (!moved.ok) return moved;
  const backedUp: readonly OpeningNote[] =
    backup.value === undefined ? [] : [{ kind: 'backed-up', file: backup.value }];
  return ok([...altered, ...backedUp, { kind: 'migrated', from, to: options.migrations.length }, ...moved.value]);
}

/** The current time, to the second or better, in UTC. */
export function clock(): string {
  return new Date().toISOString();
}
