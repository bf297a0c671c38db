import type { BookFault } from '#shared-calc/records/book-fault.ts';
import type { Migration } from './migrations/migration.ts';
import type { SyncFolder } from './sync-folder.ts';

export interface OpenOptions {
  /** `YYYY-MM-DD`, for the names of backups. */
  readonly today: string;
  /** A backup before a migration and once a day; default true. */
  readonly backups?: boolean;
  /** The time written beside each edit; the clock's unless given. */
  readonly now?: () => string;
  /** Given only where another list than the program's own is to be tried. */
  readonly migrations?: readonly Migration[];
}

/** What is worth telling when a book has been opened. */
export type OpeningNote =
  | { readonly kind: 'backed-up'; readonly file: string }
  | { readonly kind: 'backup-failed'; readonly fault: BookFault }
  | { readonly kind: 'migrated'; readonly from: number; readonly to: number }
  /** These issued quotes no longer say what was issued. */
  | { readonly kind: 'issued-altered'; readonly quotes: readonly string[] }
  | { readonly kind: 'sync-folder'; readonly folder: SyncFolder };
