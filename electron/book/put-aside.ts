import { existsSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, extname, join } from 'node:path';

/** Moves a file and its log to a free name, `NAME damaged DAY`; undefined where there is none. */
export function putAside(path: string, today: string): string | undefined {
  if (!existsSync(path)) return undefined;
  const aside = freeName(path, `damaged ${today}`);
  renameSync(path, aside);
  for (const end of ['-wal', '-shm']) if (existsSync(path + end)) renameSync(path + end, aside + end);
  return aside;
}

/** Moves the log beside a file, which does not belong to it, to a free name; its index is removed. */
export function putLogAside(path: string, today: string): string {
  const aside = freeName(`${path}.log`, `of another file ${today}`);
  renameSync(`${path}-wal`, aside);
  rmSync(`${path}-shm`, { force: true });
  return aside;
}

/** A free name beside a file: `NAME WHAT`, `NAME WHAT 2`. */
export function freeName(path: string, what: string, nth = 1): string {
  const end = extname(path);
  const name = join(dirname(path), `${basename(path, end)} ${what}${nth > 1 ? ` ${nth}` : ''}${end}`);
  return existsSync(name) ? freeName(path, what, nth + 1) : name;
}
