import { closeSync, existsSync, fsyncSync, linkSync, openSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { codeOf } from './storage-fault.ts';

type Taken = { readonly kind: 'exists' };
type Place = (passing: string, path: string) => Result<undefined, Taken>;

/** Makes a file under a passing name beside its place and, once it is whole and on the disk, moves it there. */
export function settleFile<F>(
  path: string,
  make: (passing: string) => Result<undefined, F>,
  place: Place,
): Result<undefined, F | Taken> {
  const passing = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  removeFile(passing);
  try {
    const made = make(passing);
    if (!made.ok) return made;
    flush(passing);
    const placed = place(passing, path);
    flushFolder(dirname(path));
    return placed;
  } finally {
    removeFile(passing);
  }
}

/** Takes the place of a file that may be there. */
export function placeOver(passing: string, path: string): Result<undefined, never> {
  renameSync(passing, path);
  return ok(undefined);
}

/** Takes a name only while nothing has it. */
export function placeNew(passing: string, path: string): Result<undefined, Taken> {
  try {
    linkSync(passing, path);
    return ok(undefined);
  } catch (error) {
    if (codeOf(error) === 'EEXIST' || existsSync(path)) return failed({ kind: 'exists' });
    // Some file systems know no second name for a file.
    return placeOver(passing, path);
  }
}

function removeFile(path: string): void {
  for (const each of [path, `${path}-journal`, `${path}-wal`, `${path}-shm`]) rmSync(each, { force: true });
}

function flush(path: string): void {
  const file = openSync(path, 'r+');
  try {
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** So that the new name is on the disk too; Windows neither needs nor allows it. */
function flushFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
