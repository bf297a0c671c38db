import type { BookFault, EditFault, StorageFault } from '#shared-calc/records/book-fault.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Records } from '#shared-calc/records/records.ts';
import type { Result } from '#shared-calc/result.ts';
import type { BookReport } from './check-book.ts';
import type { JournalEntry, Step } from './history.ts';
import type { OpeningNote } from './open-options.ts';
import type { QuoteNumber } from './quote-numbers.ts';
import type { RestorePreview } from './restore.ts';

export interface Book {
  readonly path: string;
  readonly notes: readonly OpeningNote[];
  /** The whole book as it stands in the file; another window's changes are read when there are any. */
  readonly records: () => Records;
  /** 0 for a book in which nothing has been written, one more with every edit, undo and redo. */
  readonly revision: () => number;
  /** Writes an edit that was made on a revision of the book: whole or not at all, and on the disk when it comes back. */
  readonly apply: (change: Change, onRevision: number) => Result<Step, EditFault>;
  /** Takes the last edit back. With `onRevision` it is refused where the book has moved on meanwhile. */
  readonly undo: (onRevision?: number) => Result<Step | 'nothing', EditFault>;
  readonly redo: (onRevision?: number) => Result<Step | 'nothing', EditFault>;
  /** What undo would take back. */
  readonly canUndo: () => string | undefined;
  readonly canRedo: () => string | undefined;
  /** Cheap, for asking often: whether another connection has written since this one last read. */
  readonly changedElsewhere: () => boolean;
  /** Every edit after a revision, in order, from whatever window. */
  readonly entriesAfter: (revision: number) => Result<readonly JournalEntry[], StorageFault>;
  /** A number that no quote has had: a new one, or the next revision of `number`. It is taken when its quote is written. */
  readonly nextQuote: (number?: string) => QuoteNumber;
  /** Writes the book out as one file. A file that is there is replaced only where `replace` says so, an open book never. */
  readonly exportTo: (
    path: string,
    options?: { readonly replace?: boolean },
  ) => Result<{ readonly path: string }, BookFault>;
  /** What restoring this backup would change. */
  readonly previewRestore: (backup: string) => Result<RestorePreview, BookFault>;
  /** Brings the backup's records back as one edit, which can be undone. Issued quotes since then stay. */
  readonly restore: (backup: string, label: string) => Result<Step, BookFault | EditFault>;
  readonly check: () => Result<BookReport, StorageFault>;
  readonly close: () => void;
}
