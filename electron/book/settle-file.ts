import {
  chmodSync,
  closeSync,
  existsSync,
  fsyncSync,
  linkSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import { codeOf } from './storage-fault.ts';

const leftoverMs = 3_600_000;

type Taken = { readonly kind: 'exists' };
type Place = (passing: string, path: string) => Result<undefined, Taken>;

/**
 * Writes a file under a temporary name in the target folder. Once it is complete and on the disk, it is moved to its
 * name.
 */
export function settleFile<F>(
  path: string,
  make: (passing: string) => Result<undefined, F>,
  place: Place,
): Result<undefined, F | Taken> {
  const passing = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  removeLeftovers(path);
  removeFile(passing);
  try {
    const made = make(passing);
    if (!made.ok) return made;
    // For this user alone: prices and clients are nobody else's business.
    chmodSync(passing, 0o600);
    flush(passing);
    const placed = place(passing, path);
    flushFolder(dirname(path));
    return placed;
  } finally {
    removeFile(passing);
  }
}

/** Moves the file over an existing one. */
export function placeOver(passing: string, path: string): Result<undefined, never> {
  renameSync(passing, path);
  return ok(undefined);
}

/** Moves the file only if the name is free. */
export function placeNew(passing: string, path: string): Result<undefined, Taken> {
  try {
    linkSync(passing, path);
    return ok(undefined);
  } catch (error) {
    if (codeOf(error) === 'EEXIST' || existsSync(path)) return failed({ kind: 'exists' });
    // Some file systems have no hard links.
    return placeOver(passing, path);
  }
}

/** A file of this name that a killed program left unfinished; one of the last hour may still be being written. */
function removeLeftovers(path: string): void {
  const [folder, start] = [dirname(path), `.${basename(path)}.`];
  for (const name of readdirSync(folder)) {
    if (!name.startsWith(start) || !/^\d+\.part(?:-journal|-wal|-shm)?$/.test(name.slice(start.length))) continue;
    const file = join(folder, name);
    const written = statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
    if (Date.now() - written > leftoverMs) rmSync(file, { force: true });
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

/** Puts the new name on the disk too; Windows neither needs nor allows it. */
function flushFolder(folder: string): void {
  if (process.platform === 'win32') return;
  const handle = openSync(folder, 'r');
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
