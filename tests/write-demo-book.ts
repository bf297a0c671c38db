import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeDemoBook } from '#electron/book/seed-demo.ts';

const made = new Map<string, Buffer>();

/** Writes a book of the demo workshop, made on a day; one is made per day and process, and the others are copies. */
export function writeDemoBook(path: string, day: string): void {
  const book = made.get(day) ?? makeDemo(day);
  made.set(day, book);
  writeFileSync(path, book, { flag: 'wx' });
}

function makeDemo(day: string): Buffer {
  const folder = mkdtempSync(join(tmpdir(), 'loamwright-demo-'));
  try {
    const path = join(folder, 'demo.loamwright');
    const book = makeDemoBook(path, { today: day, backups: false, now: () => `${day}T09:00:00.000Z` });
    if (!book.ok) throw new Error(JSON.stringify(book.fault));
    book.value.close();
    return readFileSync(path);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
