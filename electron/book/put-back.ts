import type { BookFault } from '#shared-calc/records/book-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { writeSnapshot } from './backups.ts';
import type { OpenFile } from './open-file.ts';
import { putAside } from './put-aside.ts';
import { placeNew, settleFile } from './settle-file.ts';
import { storing } from './storage-fault.ts';

/** Takes the log into the file once it has been quiet for this long. */
const quietMs = 1000;

/** Takes the log of an open file into it, when it has been quiet. Does nothing where the file is another by now. */
export function settleLog({ connection, state, place }: OpenFile, afterMs = quietMs): void {
  const log = place.log();
  if (log.bytes === 0 || log.quietMs < afterMs || state.gone()) return;
  connection.db.pragma('wal_checkpoint(TRUNCATE)');
  place.note();
}

/** Closes an open file. The log of one that was written over by hand is dropped: it would make a mixture of the two. */
export function closeFile({ connection, state, place }: OpenFile): void {
  if (connection.db.open && state.gone() === 'written over') place.dropLog();
  connection.close();
}

/**
 * Writes what is open to the name that it was opened by, and closes it. A file that was written over is refused: its
 * pages are no longer those that are open.
 */
export function putBack(file: OpenFile, today: string): Result<{ readonly aside: string | undefined }, BookFault> {
  const { path, connection, state, place } = file;
  const how = state.gone();
  if (how === 'written over') return failed({ kind: 'gone', how });
  if (how === undefined) return ok({ aside: undefined });
  return storing(() => {
    let aside: string | undefined;
    const settled = settleFile(
      path,
      (passing) => writeSnapshot(connection.db, passing),
      (passing, name) => {
        // A file that has moved keeps its log, which bears the name of the file that is put back.
        connection.db.pragma('wal_checkpoint(TRUNCATE)');
        connection.close();
        aside = putAside(name, today);
        place.removeLog();
        return placeNew(passing, name);
      },
    );
    return settled.ok ? ok({ aside }) : settled;
  });
}
