import type { BookFault, EditFault, GoneHow, LookingFault, StorageFault } from '#shared-calc/records/book-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import type { BookReport } from './check-book.ts';
import type { AlteredRow } from './checksums.ts';
import type { JournalEntry, Step } from './history.ts';
import type { OpeningNote } from './open-options.ts';
import type { QuoteNumber } from './quote-numbers.ts';
import type { RestorePreview } from './restore.ts';

export interface Book {
  readonly path: string;
  readonly notes: readonly OpeningNote[];
  /** Only of a book that cannot be written: why, and whether to open it anew. Every edit of it is refused. */
  readonly looking?: { readonly fault: LookingFault; readonly isStale: () => boolean };
  /** The whole book as stored in the file; includes what other windows have written. */
  readonly records: () => Records;
  /** 0 for an empty book; each edit, undo and redo adds one. */
  readonly revision: () => number;
  /** Writes an edit made on a revision of the book: all of it or nothing. On success it is on the disk. */
  readonly apply: (change: Change, onRevision: number) => Result<Step, EditFault>;
  /** Undoes the last edit. With `onRevision`, it is refused if the book has changed since. */
  readonly undo: (onRevision?: number) => Result<Step | 'nothing', EditFault>;
  readonly redo: (onRevision?: number) => Result<Step | 'nothing', EditFault>;
  /** The label of the edit that undo would revert. */
  readonly canUndo: () => string | undefined;
  readonly canRedo: () => string | undefined;
  /** Whether another connection has written since this one last read. Cheap enough to poll. */
  readonly changedElsewhere: () => boolean;
  /** Every edit after a revision, in order, from any window. */
  readonly entriesAfter: (revision: number) => Result<readonly JournalEntry[], StorageFault>;
  /**
   * An unused quote number: a new one, or the next revision of `number`. It is reserved only when its quote is written.
   */
  readonly nextQuote: (number?: string) => QuoteNumber;
  /** Exports the book as one file. Overwrites an existing file only with `replace`, and never an open book. */
  readonly exportTo: (
    path: string,
    options?: { readonly replace?: boolean },
  ) => Result<{ readonly path: string }, BookFault>;
  /** Looks through the history that opening does not read, a slice at a time; gives what is altered in it. */
  readonly checkHistory: () => Iterator<undefined, readonly AlteredRow[]>;
  /** Takes the book as it stands in the file, although checksums or journal say otherwise. */
  readonly accept: () => Result<Step, EditFault>;
  /** What restoring this backup would change. */
  readonly previewRestore: (backup: string) => Result<RestorePreview, BookFault>;
  /** Restores the backup's records as one edit, which can be undone. Quotes issued since then stay. */
  readonly restore: (backup: string, label: string) => Result<Step, BookFault | EditFault>;
  readonly check: () => Result<BookReport, StorageFault>;
  /** How the file has gone while it is open; then nothing more is written. Cheap enough to poll. */
  readonly gone: () => GoneHow | undefined;
  /** Puts a removed or replaced file back from what is open, and closes; a file in its place is kept `aside`. */
  readonly putBack: () => Result<{ readonly aside: string | undefined }, BookFault>;
  /** Takes the log into the file, after a second of quiet: at rest the one file is the whole book. */
  readonly settle: (afterMs?: number) => void;
  readonly close: () => void;
}
