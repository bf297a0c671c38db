import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';
import type { BookFault } from '#shared-calc/records/book-fault.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { isOpenHere } from './connection.ts';
import type { OpenOptions } from './open-options.ts';
import { readBackup } from './restore.ts';
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

/** Moves a file and its log to a free name, `NAME damaged DAY`; undefined where there is none. */
export function putAside(path: string, today: string): string | undefined {
  if (!existsSync(path)) return undefined;
  const aside = freeName(path, `damaged ${today}`, 1);
  renameSync(path, aside);
  for (const end of ['-wal', '-shm']) if (existsSync(path + end)) renameSync(path + end, aside + end);
  return aside;
}

/** Moves the log beside a file, which does not belong to it, to a free name; its index is removed. */
export function putLogAside(path: string, today: string): string {
  const aside = freeName(`${path}.log`, `of another file ${today}`, 1);
  renameSync(`${path}-wal`, aside);
  rmSync(`${path}-shm`, { force: true });
  return aside;
}

function freeName(path: string, what: string, nth: number): string {
  const end = extname(path);
  const name = join(dirname(path), `${basename(path, end)} ${what}${nth > 1 ? ` ${nth}` : ''}${end}`);
  return existsSync(name) ? freeName(path, what, nth + 1) : name;
}
