import { mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { faultOf, newBook, reopen, temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, oneOfEach, sortRecords } from '#tests/electron/book/sample-records.ts';

describe('Book.exportTo', () => {
  test('a book that is open is written out as one whole file, which is a book again', () => {
    const book = newBook(adding('begin', ...oneOfEach));
    const path = join(temporaryFolder(), 'copy.loamwright');

    expect(valueOf(book.exportTo(path))).toEqual({ path });
    expect(readdirSync(dirname(path))).toEqual(['copy.loamwright']);
    const copy = reopen(path);
    expect(sortRecords(copy.records())).toEqual(sortRecords(book.records()));
    expect(copy.check()).toMatchObject({ value: { sound: true, revision: 1 } });
  });

  test('a file that is there stays, unless it is to be replaced', () => {
    const book = newBook();
    const path = join(temporaryFolder(), 'copy.loamwright');
    writeFileSync(path, 'mine');

    expect(faultOf(book.exportTo(path))).toEqual({ kind: 'exists' });
    expect(readFileSync(path, 'utf8')).toBe('mine');
    expect(valueOf(book.exportTo(path, { replace: true }))).toEqual({ path });
    expect(reopen(path).revision()).toBe(1);
  });

  test('an open book is never written over, neither itself nor another', () => {
    const book = newBook();
    const other = newBook(adding('begin', ...oneOfEach));

    expect([book.path, other.path].map((path) => faultOf(book.exportTo(path, { replace: true })))).toEqual([
      { kind: 'in-use' },
      { kind: 'in-use' },
    ]);
    expect(other.check()).toMatchObject({ value: { sound: true } });
  });

  test('a book whose last edits still lie beside it is not written over', () => {
    const folder = temporaryFolder();
    const path = join(folder, 'other.loamwright');
    for (const end of ['', '-wal']) writeFileSync(path + end, 'another program’s');

    expect(faultOf(newBook().exportTo(path, { replace: true }))).toEqual({ kind: 'in-use' });
    expect(readdirSync(folder)).toEqual(['other.loamwright', 'other.loamwright-wal']);
  });

  test('a folder in the way and a folder that is not there are refused', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'a.loamwright'));
    const paths = [join(folder, 'a.loamwright'), join(folder, 'gone', 'b.loamwright')];

    expect(paths.map((path) => faultOf(newBook().exportTo(path, { replace: true })))).toEqual([
      { kind: 'not-a-book', what: 'folder' },
      { kind: 'no-folder' },
    ]);
  });
});
