import { existsSync, mkdirSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import type { BookFault, EditFault } from '#shared-calc/records/book-fault.ts';
import { type Change, emptyChange } from '#shared-calc/records/change.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { bookState } from './book-state.ts';
import type { Book } from './book.ts';
import { editsOf } from './edit.ts';
import { applicationId } from './header.ts';
import { applyMigrations, newestVersion } from './migrate.ts';
import { migrations as ownMigrations } from './migrations/all.ts';
import { openBook } from './open-book.ts';
import { clock } from './open-file.ts';
import type { OpenOptions } from './open-options.ts';
import type { UsedNumber } from './quote-numbers.ts';
import { placeNew, settleFile } from './settle-file.ts';
import { storing } from './storage-fault.ts';

/**
 * Creates a book and opens it: a complete file under its name, or no file. It starts empty unless records are given.
 */
export function createBook(
  path: string,
  options: OpenOptions & { readonly begin?: Change; readonly numbers?: readonly UsedNumber[] },
): Result<Book, BookFault | EditFault> {
  const { begin = emptyChange('new book'), numbers = [], ...opening } = options;
  if (existsSync(path)) return failed({ kind: 'exists' });
  const made = storing(() => {
    mkdirSync(dirname(path), { recursive: true, mode: 0o700 });
    return settleFile(path, (passing) => writeNew(passing, { begin, numbers }, opening), placeNew);
  });
  return made.ok ? openBook(path, { ...opening, backups: false }) : made;
}

interface Contents {
  readonly begin: Change;
  /** Numbers of quotes that were sent and are not in the book any more. */
  readonly numbers: readonly UsedNumber[];
}

function writeNew(file: string, { begin, numbers }: Contents, options: OpenOptions): Result<undefined, EditFault> {
  const migrations = options.migrations ?? ownMigrations;
  newestVersion(migrations);
  const db = new Database(file);
  try {
    // The finished file is flushed before it gets its name; until then nobody can lose it.
    db.pragma('synchronous = OFF');
    db.pragma(`application_id = ${applicationId}`);
    applyMigrations(db, migrations);
    const state = bookState(db);
    for (const number of numbers) state.numbers.use(number);
    const begun = editsOf(state, options.now ?? clock).begin(begin);
    return begun.ok ? ok(undefined) : begun;
  } finally {
    db.close();
  }
}
