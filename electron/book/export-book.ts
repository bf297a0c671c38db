import { existsSync, statSync } from 'node:fs';
import type Database from 'better-sqlite3';
import type { BookFault } from '#shared-calc/records/book-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { writeSnapshot } from './backups.ts';
import { isOpenHere } from './connection.ts';
import { placeNew, placeOver, settleFile } from './settle-file.ts';
import { storing } from './storage-fault.ts';

/** Writes an open book out as one whole file. What is in the way is replaced only on demand, an open book never. */
export function exportBook(
  db: Database.Database,
  path: string,
  { replace = false }: { readonly replace?: boolean } = {},
): Result<{ readonly path: string }, BookFault> {
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
  // Another program has it open, or its last edits still lie in the log: they would be laid over the new file.
  const logged = existsSync(`${path}-wal`) || existsSync(`${path}-shm`);
  return logged ? { kind: 'in-use' } : undefined;
}
