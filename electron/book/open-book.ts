import type { BookFault, LookingFault } from '#shared-calc/records/book-fault.ts';
import { ok, type Result, failed } from '#shared-calc/result.ts';
import { backUpForDay, lacksBackup, writeSnapshot } from './backups.ts';
import type { BookState, Present } from './book-state.ts';
import type { Book } from './book.ts';
import { checkBook } from './check-book.ts';
import { findAlteredHistory } from './checksums.ts';
import { editsOf } from './edit.ts';
import { verifyIssued } from './issued.ts';
import { copyToLookAt, isForLooking } from './look-at-book.ts';
import { clock, openFile, type OpenFile } from './open-file.ts';
import type { OpeningNote, OpenOptions } from './open-options.ts';
import { closeFile, putBack, settleLog } from './put-back.ts';
import { squashJournal } from './squash-journal.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
import { previewOf, readBackup, restoreChange } from './restore.ts';
import { storing } from './storage-fault.ts';
import { syncFolderOf } from './sync-folder.ts';
import { existsSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import { isOpenHere } from './connection.ts';
import { placeNew, placeOver, settleFile } from './settle-file.ts';
import type Database from 'better-sqlite3';

/** Opens a workshop's book; one that cannot be written is open for looking. A refused file is not changed. */
export function openBook(path: string, options: OpenOptions): Result<Book, BookFault> {
  const file = openFile(path, options);
  if (file.ok) return ok(bookOf(file.value, options));
  return isForLooking(file.fault) ? lookAt(path, file.fault, options) : file;
}

function lookAt(path: string, fault: LookingFault, options: OpenOptions): Result<Book, BookFault> {
  const copy = copyToLookAt(path, fault, options);
  if (!copy.ok) return copy;
  const { file, isStale, forget } = copy.value;
  const book = bookOf(file, { ...options, backups: false });
  const refuse = () => failed(fault);
  return ok({
    ...book,
    path,
    notes: [{ kind: 'looking', fault }, ...book.notes],
    looking: { fault, isStale },
    apply: refuse,
    undo: refuse,
    redo: refuse,
    restore: refuse,
    accept: refuse,
    gone: () => undefined,
    settle: () => undefined,
    close: () => {
      book.close();
      forget();
    },
  });
}

function bookOf(file: OpenFile, options: OpenOptions): Book {
  const { state, connection, path } = file;
  const { db } = connection;
  const edits = editsOf(state, options.now ?? clock);
  const present = () => presentOf(state);
  return {
    path,
    notes: [...file.notes, ...openingNotes(file, present(), options)],
    records: () => present().records,
    revision: () => present().revision,
    apply: edits.apply,
    undo: edits.undo,
    redo: edits.redo,
    canUndo: () => state.history().past.at(-1)?.label,
    canRedo: () => state.history().future.at(-1)?.label,
    changedElsewhere: state.changedElsewhere,
    entriesAfter: state.journal.entriesAfter,
    nextQuote: state.numbers.next,
    exportTo: (target, how) => exportBook(db, target, how),
    previewRestore: (backup) => {
      const records = readBackup(backup, options);
      return records.ok ? ok(previewOf(present().records, records.value)) : records;
    },
    restore: (backup, label) => {
      const records = readBackup(backup, options);
      if (!records.ok) return records;
      // The journal cannot lead to what was altered; it counts from here.
      const accepted = present().altered.length > 0 ? edits.accept() : ok(undefined);
      return accepted.ok ? edits.applyTo((now) => restoreChange(label, now, records.value).change) : accepted;
    },
    accept: edits.accept,
    checkHistory: () => findAlteredHistory(db),
    check: () => storing(() => ok(checkBook(db))),
    gone: state.gone,
    putBack: () => putBack(file, options.today),
    settle: (afterMs) => settleLog(file, afterMs),
    close: () => closeFile(file),
  };
}

/** The file has been read before, so a failure here is a bug. */
function presentOf(state: BookState): Present {
  const present = state.present();
  if (!present.ok) throw new Error(`the open book cannot be read: ${JSON.stringify(present.fault)}`);
  return present.value;
}

function openingNotes(
  { connection, path, state, place }: OpenFile,
  { records, altered }: Present,
  options: OpenOptions,
): readonly OpeningNote[] {
  const backup = options.backups === false ? undefined : dailyBackup(connection.db, path, options.today);
  const issued = verifyIssued(records).flatMap(({ id, holds }) => (holds ? [] : [id]));
  const rows = altered.filter(({ table, key }) => table !== 'issued_quote' || !issued.includes(key));
  const folder = syncFolderOf(path);
  // Once a day, and only over a backup that still has what goes.
  if (backup?.kind === 'backed-up' && squashJournal(state, addDays(options.today, -366)) > 0) place.note();
  return [
    ...(backup ? [backup] : []),
    ...(rows.length > 0 ? [{ kind: 'altered', rows } as const] : []),
    ...(issued.length > 0 ? [{ kind: 'issued-altered', quotes: issued } as const] : []),
    ...(folder ? [{ kind: 'sync-folder', folder } as const] : []),
  ];
}

/** The day's backup, if it is still to be made. A book that is not sound is not backed up: its backups are the sound ones. */
function dailyBackup(db: Database.Database, path: string, today: string): OpeningNote | undefined {
  if (!lacksBackup(path, today)) return undefined;
  const { findings } = checkBook(db);
  if (findings.length > 0) return { kind: 'backup-unsound', findings: findings.length };
  const made = backUpForDay(db, path, today);
  return made.ok ? { kind: 'backed-up', file: made.value } : { kind: 'backup-failed', fault: made.fault };
}

/** Exports an open book as one file. Overwrites an existing file only on request, and never an open book. */
function exportBook(
  db: Database.Database,
  path: string,
  { replace = false }: { readonly replace?: boolean } = {},
): Result<{ readonly path: string }, BookFault> {
  if (!existsSync(dirname(path))) return failed({ kind: 'no-folder' });
  return storing(() => {
    const inTheWay = findInTheWay(path, replace);
    if (inTheWay) return failed(inTheWay);
    const settled = settleFile(path, (passing) => writeSnapshot(db, passing), replace ? placeOver : placeNew);
    return settled.ok ? ok({ path }) : settled;
  });
}

function findInTheWay(path: string, replace: boolean): BookFault | undefined {
  const there = statSync(path, { throwIfNoEntry: false });
  if (!there) return undefined;
  if (!there.isFile()) return { kind: 'not-a-book', what: 'folder' };
  if (isOpenHere(path)) return { kind: 'in-use' };
  if (!replace) return { kind: 'exists' };
  // Another program has it open, or its last edits are still in the log, which would be applied to the new file.
  const logged = existsSync(`${path}-wal`) || existsSync(`${path}-shm`);
  return logged ? { kind: 'in-use' } : undefined;
}
