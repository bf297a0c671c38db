import type { BookFault, LookingFault } from '#shared-calc/records/book-fault.ts';
import type { AlteredRow } from './checksums.ts';
import type { Migration, MigrationNote } from './migrations/migration.ts';
import type { SyncFolder } from './sync-folder.ts';

export interface OpenOptions {
  /** `YYYY-MM-DD`, for the names of backups. */
  readonly today: string;
  /** Makes a backup before a migration and once a day; default true. */
  readonly backups?: boolean;
  /** The time recorded with each edit; the system clock by default. */
  readonly now?: () => string;
  /** Only for trying a list of migrations other than the program's own. */
  readonly migrations?: readonly Migration[];
}

/** What the user should know after a book has been opened. */
export type OpeningNote =
  /** The file cannot be written. */
  | { readonly kind: 'looking'; readonly fault: LookingFault }
  | { readonly kind: 'backed-up'; readonly file: string }
  /** These rows of the file are not as they were last written. */
  | { readonly kind: 'altered'; readonly rows: readonly AlteredRow[] }
  /** The day's backup was not made: `book check` finds something wrong. */
  | { readonly kind: 'backup-unsound'; readonly findings: number }
  /** The log beside the file belonged to another one; its edits are not in the book. */
  | { readonly kind: 'log-aside'; readonly file: string }
  | { readonly kind: 'backup-failed'; readonly fault: BookFault }
  | { readonly kind: 'migrated'; readonly from: number; readonly to: number }
  | MigrationNote
  /** These issued quotes have changed since they were issued. */
  | { readonly kind: 'issued-altered'; readonly quotes: readonly string[] }
  | { readonly kind: 'sync-folder'; readonly folder: SyncFolder };
