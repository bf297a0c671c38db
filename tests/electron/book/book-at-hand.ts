import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { Book } from '#electron/book/book.ts';
import { createBook } from '#electron/book/create-book.ts';
import { openBook } from '#electron/book/open-book.ts';
import type { OpenOptions } from '#electron/book/open-options.ts';
import type { Change } from '#shared-calc/records/change.ts';
import type { Result } from '#shared-calc/result.ts';
import { today } from './sample-records.ts';

const plain: OpenOptions = { today, backups: false, now: () => '2027-03-10T09:00:00Z' };

/** An empty folder that is removed after the test. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-test-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** The value of a result that must be ok. */
export function valueOf<T, F>(result: Result<T, F>): T {
  if (!result.ok) throw new Error(JSON.stringify(result.fault));
  return result.value;
}

/** The fault of a result, or nothing. */
export function faultOf<T, F>(result: Result<T, F>): F | undefined {
  return result.ok ? undefined : result.fault;
}

export function newBook(begin?: Change, path = join(temporaryFolder(), 'Small workshop.loamwright')): Book {
  return closedAfter(valueOf(createBook(path, begin ? { ...plain, begin } : plain)));
}

export function reopen(path: string, options: Partial<OpenOptions> = {}): Book {
  return closedAfter(valueOf(openBook(path, { ...plain, ...options })));
}

/** Every file of a folder with its bytes, to check that nothing changed. */
export function folderBytes(folder: string): Readonly<Record<string, string>> {
  const files = readdirSync(folder).map((name) => join(folder, name));
  return Object.fromEntries(
    files.map((file) => [file, statSync(file).isFile() ? readFileSync(file, 'base64') : 'folder']),
  );
}

function closedAfter(book: Book): Book {
  onTestFinished(book.close);
  return book;
}
