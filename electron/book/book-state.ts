import type Database from 'better-sqlite3';
import { z } from 'zod';
import type { StorageFault } from '#shared-calc/records/book-fault.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { foldHistory, type History, noHistory } from './history.ts';
import { type Journal, openJournal } from './journal.ts';
import { openQuoteNumbers, type QuoteNumbers } from './quote-numbers.ts';
import { readRecords } from './read-records.ts';
import { changeWriter } from './write-change.ts';

/** The book as this connection last read or wrote it. */
export interface Present {
  readonly records: Records;
  readonly revision: number;
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
  readonly history: () => History;
  /** Sets the cached state to what has just been committed. */
  readonly moveOn: (next: Present) => void;
}

export function bookState(db: Database.Database): BookState {
  const journal = openJournal(db);
  const readVersion = db.prepare('PRAGMA data_version').pluck();
  const dataVersion = () => z.int().parse(readVersion.get());
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
    moveOn: (next) => {
      // Writes of this connection do not change the data version.
      if (known) known = { ...known, ...next };
    },
  };
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
  return ok({ records: records.value, revision, dataVersion: version });
}
