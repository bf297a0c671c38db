import type Database from 'better-sqlite3';
import type { BookFault } from '#shared-calc/records/book-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { sumAll } from './checksums.ts';
import { noteMigration } from './journal.ts';
import type { Migration, MigrationNote } from './migrations/migration.ts';
import { isDatabaseError, storageFaultOf } from './storage-fault.ts';

/** The version of a book after all migrations. Throws on a gap or a wrong order, which is a bug. */
export function newestVersion(migrations: readonly Migration[]): number {
  for (const [index, migration] of migrations.entries()) {
    if (migration.version !== index + 1) throw new Error(`migration ${migration.name} should be number ${index + 1}`);
  }
  return migrations.length;
}

/** When a book is brought forward: the time for its journal, and the day of the person at it. */
export interface MigrationTime {
  readonly at: string;
  readonly day: string;
}

/** Migrates a book, each step and its version in one transaction. A failed step changes nothing. */
export function migrate(
  db: Database.Database,
  migrations: readonly Migration[],
  { at, day }: MigrationTime,
): Result<readonly MigrationNote[], BookFault> {
  const notes: MigrationNote[] = [];
  for (const migration of migrations) {
    try {
      const taken: StepNotes = {
        day,
        finish: () => {
          noteMigration(db, migration.name, at);
          sumAll(db);
        },
        tell: (note) => notes.push(note),
      };
      withLooseKeys(db, () => take(db, migration, taken));
    } catch (error) {
      return failed(migrationFault(error, migration));
    }
  }
  return ok(notes);
}

/** The same for a book that has no journal yet, in one transaction: all steps are taken, or none. */
export function applyMigrations(db: Database.Database, migrations: readonly Migration[]): void {
  withLooseKeys(db, () => {
    for (const migration of migrations) take(db, migration, noNotes);
  });
}

interface StepNotes {
  readonly day: string;
  /** Closes the step in the book's own record of itself. */
  readonly finish: () => void;
  readonly tell: (note: MigrationNote) => void;
}

/** A new book has no records yet that a step could date or tell of. */
const noNotes: StepNotes = { day: '', finish: () => undefined, tell: () => undefined };

function take(db: Database.Database, migration: Migration, notes: StepNotes): void {
  migration.up(db, notes.tell, notes.day);
  notes.finish();
  db.pragma(`user_version = ${migration.version}`);
  const loose = db.pragma('foreign_key_check');
  if (Array.isArray(loose) && loose.length > 0) throw new Error(`${migration.name} leaves loose references`);
}

/** A transaction in which tables may be rebuilt. */
function withLooseKeys(db: Database.Database, work: () => void): void {
  // Rebuilding a table drops it, so foreign keys must be off; they can only be switched outside a transaction.
  db.pragma('foreign_keys = OFF');
  try {
    db.transaction(work).immediate();
  } finally {
    db.pragma('foreign_keys = ON');
  }
}

function migrationFault(error: unknown, migration: Migration): BookFault {
  const fault = storageFaultOf(error);
  if (fault) return fault;
  if (!isDatabaseError(error)) throw error;
  return { kind: 'migration-failed', version: migration.version, name: migration.name, says: error.message };
}
