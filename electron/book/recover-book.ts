import { copyFileSync, existsSync } from 'node:fs';
import type { BookFault } from '#shared-calc/records/book-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { isOpenHere } from './connection.ts';
import type { OpenOptions } from './open-options.ts';
import { readBackup } from './restore.ts';
import { putAside } from './put-aside.ts';
import { placeNew, settleFile } from './settle-file.ts';
import { storing } from './storage-fault.ts';

/**
 * Replaces a book that is missing or cannot be opened by a backup. The old file is kept under another name, `aside`.
 * A book that can still be opened is restored with `restore` instead.
 */
export function recoverBook(
  path: string,
  backup: string,
  options: OpenOptions,
): Result<{ readonly aside: string | undefined }, BookFault> {
  if (existsSync(path) && isOpenHere(path)) return failed({ kind: 'in-use' });
  const readable = readBackup(backup, options);
  if (!readable.ok) return readable;
  return storing(() => {
    let aside: string | undefined;
    const settled = settleFile(
      path,
      (passing) => copyOf(backup, passing),
      (passing, place) => {
        aside = putAside(place, options.today);
        return placeNew(passing, place);
      },
    );
    return settled.ok ? ok({ aside }) : settled;
  });
}

function copyOf(backup: string, file: string): Result<undefined, never> {
  copyFileSync(backup, file);
  return ok(undefined);
}
