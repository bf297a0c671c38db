import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { createBook } from '#electron/book/create-book.ts';
import { migrations } from '#electron/book/migrations/all.ts';
import { adding, oneOfEach, today } from '#tests/electron/book/sample-records.ts';

/*
 * Writes the book of today's version that later versions must still open: one record of each kind, and an edit to
 * undo. Run once for each version, before the next migration is begun:
 *   node tests/electron/book/write-book-fixture.ts
 */
const version = migrations.length;
const path = fileURLToPath(new URL(`../../../fixtures/books/v${version}.loamwright`, import.meta.url));
const now = () => `${today}T09:00:00Z`;

rmSync(path, { force: true });
const made = createBook(path, { today, backups: false, now, begin: adding('small workshop', ...oneOfEach) });
if (!made.ok) throw new Error(JSON.stringify(made.fault));
const plant = made.value.records().plant.get('P01');
if (!plant) throw new Error('no plant');
const written = made.value.apply(
  { ...adding('note of P01'), updated: [{ kind: 'plant', from: plant, to: { ...plant, note: 'Trim it.' } }] },
  1,
);
if (!written.ok) throw new Error(JSON.stringify(written.fault));
made.value.close();
shrink(path);

/** Small pages: most tables hold one row. */
function shrink(file: string): void {
  const db = new Database(file);
  db.pragma('journal_mode = DELETE');
  db.pragma('page_size = 512');
  db.exec('VACUUM');
  db.close();
}
