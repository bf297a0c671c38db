import type Database from 'better-sqlite3';
import { z } from 'zod';
import type { GoneHow, StorageFault } from '#shared-calc/records/book-fault.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { AlteredRow } from './checksums.ts';
import type { FilePlace } from './file-place.ts';
import { foldHistory, type History, noHistory } from './history.ts';
import { type Journal, openJournal } from './journal.ts';
import { openQuoteNumbers, type QuoteNumbers } from './quote-numbers.ts';
import { readRecords } from './read-records.ts';
import { changeWriter } from './write-change.ts';

/** The book as this connection last read or wrote it. */
export interface Present {
  readonly records: Records;
  readonly revision: number;
  /** Records that the file did not give as they were last written; said when the book is opened. */
  readonly altered: readonly AlteredRow[];
}

/** The file behind a book and the cached state. */
export interface BookState {
  readonly db: Database.Database;
  readonly journal: Journal;
  readonly numbers: QuoteNumbers;
  readonly write: ReturnType<typeof changeWriter>;
  /** Reads again only if another connection has written. */
  readonly present: () => Result<Present, StorageFault>;
  readonly changedElsewhere: () => boolean;
  /** How the file has gone while it was open; always undefined for a file that is still being made. */
  readonly gone: () => GoneHow | undefined;
  readonly history: () => History;
  /** Sets the cached state to what this connection has just committed. */
  readonly moveOn: (next: Present) => void;
}

/** The state of an open file; `place` is left out for one that is still being made. */
export function bookState(db: Database.Database, place?: FilePlace): BookState {
  const journal = openJournal(db);
  const dataVersion = dataVersionOf(db);
  const read = db.transaction(() => readPresent(db, journal, dataVersion));
  let known: (Present & { readonly dataVersion: number }) | undefined;
  let history = { upTo: 0, is: noHistory };

  function present(): Result<Present, StorageFault> {
    if (known && known.dataVersion === dataVersion()) return ok(known);
    const fresh = read();
    if (fresh.ok) known = fresh.value;
    return fresh;
  }
  function readHistory(): History {
    const upTo = journal.revision();
    if (upTo !== history.upTo) history = { upTo, is: foldHistory(history.is, journal.stepsAfter(history.upTo)) };
    return history.is;
  }
  return {
    db,
    journal,
    numbers: openQuoteNumbers(db),
    write: changeWriter(db),
    present,
    changedElsewhere: () => known?.dataVersion !== dataVersion(),
    history: readHistory,
    gone: () => place?.gone(),
    moveOn: (next) => {
      place?.note();
      // Writes of this connection do not change the data version.
      if (known) known = { ...known, ...next };
    },
  };
}

/** Moves whenever another connection has written or settled the log. */
export function dataVersionOf(db: Database.Database): () => number {
  const read = db.prepare('PRAGMA data_version').pluck();
  return () => z.int().parse(read.get());
}

function readPresent(
  db: Database.Database,
  journal: Journal,
  dataVersion: () => number,
): Result<Present & { readonly dataVersion: number }, StorageFault> {
  const revision = journal.revision();
  const version = dataVersion();
  const records = readRecords(db);
  if (!records.ok) return failed({ kind: 'damaged', damage: { what: 'records', records: records.fault } });
  return ok({ ...records.value, revision, dataVersion: version });
}
