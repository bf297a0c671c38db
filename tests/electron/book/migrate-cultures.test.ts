import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import type { Book } from '#electron/book/book.ts';
import { seedUseOf } from '#shared-calc/prepare/culture-demands.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { reopen, temporaryFolder } from '#tests/electron/book/book-at-hand.ts';

const books = fileURLToPath(new URL('../../../fixtures/books/', import.meta.url));

function copyOf(name: string): string {
  const path = join(temporaryFolder(), 'Shop.loamwright');
  copyFileSync(join(books, name), path);
  return path;
}

describe('the step to version 14', () => {
  const animalsIn = (book: Book) =>
    Object.fromEntries([...book.records().cultureKind.values()].map(({ id, animals }) => [id, animals]));

  test('kinds of culture of the demo workshop are the animals that a new book says', () => {
    const book = reopen(copyOf('demo/v3.loamwright'));

    expect(animalsIn(book)).toEqual(
      Object.fromEntries([...demoRecords().cultureKind.values()].map(({ id, animals }) => [id, animals])),
    );
    book.close();
  });

  test('a kind of its own is what it was worked as', () => {
    const path = copyOf('v13.loamwright');
    const db = new Database(path);
    db.exec("UPDATE culture_kind SET label = 'Our ISOPODS'");
    db.close();
    const book = reopen(path);
    const [kind] = book.records().cultureKind.values();

    expect(animalsIn(book)).toEqual({ C1: 'isopods' });
    expect(kind && seedUseOf(kind)).toBe('isopodFounders');
    book.close();
  });
});
