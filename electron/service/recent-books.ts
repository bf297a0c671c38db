import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, resolve } from 'node:path';

import { z } from 'zod';

const keptBooks = 10;
const Paths = z.array(z.string()).max(1_000);

/** The books opened last, newest first, as far as their files still exist. */
export function readRecent(file: string): readonly string[] {
  return readPaths(file).filter((path) => existsSync(path));
}

/** The book opened last, whether its file is still there or not. */
export function lastOpened(file: string): string | undefined {
  return readPaths(file)[0];
}

export function wasOpened(file: string, path: string): boolean {
  return readPaths(file).includes(resolve(path));
}

/** Puts a book first in the list. Failing to write the list is not a fault of the book. */
export function rememberRecent(file: string, path: string): void {
  const whole = resolve(path);
  const paths = [whole, ...readPaths(file).filter((each) => each !== whole)].slice(0, keptBooks);
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(`${file}.part`, JSON.stringify(paths));
    renameSync(`${file}.part`, file);
  } catch {
    // The list is only a convenience; the book is open all the same.
  }
}

/** A missing or invalid list is read as empty. */
function readPaths(file: string): readonly string[] {
  try {
    return Paths.catch([]).parse(JSON.parse(readFileSync(file, 'utf8')));
  } catch {
    // Missing or not JSON: both mean an empty list.
    return [];
  }
}
