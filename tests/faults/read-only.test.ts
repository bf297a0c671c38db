import { chmodSync, chownSync } from 'node:fs';
import { dirname } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { folderBytes, newBook } from '#tests/electron/book/book-at-hand.ts';
import { adding, oneOfEach } from '#tests/electron/book/sample-records.ts';
import { startChild } from '#tests/faults/child.ts';

interface Case {
  readonly says: string;
  readonly file: number;
  readonly folder: number;
  readonly answer: unknown;
}

const cases: readonly Case[] = [
  { says: 'a book that may be read and written opens', file: 0o666, folder: 0o777, answer: 'opened' },
  {
    says: 'a book that may only be read is looked at',
    file: 0o444,
    folder: 0o777,
    answer: { kind: 'read-only', what: 'file' },
  },
  {
    says: 'a book in a folder that may only be read is looked at',
    file: 0o666,
    folder: 0o555,
    answer: { kind: 'read-only', what: 'folder' },
  },
  { says: 'a book that may not be read', file: 0o000, folder: 0o777, answer: { kind: 'no-access' } },
];

// Windows has no such file permissions.
describe.skipIf(process.platform === 'win32')('openBook as an ordinary user', () => {
  test.each(cases)('$says: $answer', async ({ file, folder, answer }) => {
    const book = newBook(adding('begin', ...oneOfEach));
    book.close();
    const before = folderBytes(dirname(book.path));
    give(book.path, file);
    give(dirname(book.path), folder);
    onTestFinished(() => chmodSync(dirname(book.path), 0o700));

    expect(JSON.parse(await startChild('open-as-other.ts', book.path).nextLine())).toEqual(answer);
    chmodSync(dirname(book.path), 0o700);
    chmodSync(book.path, 0o600);
    expect(folderBytes(dirname(book.path))).toEqual(before);
  });
});

function give(path: string, mode: number): void {
  if (process.getuid?.() === 0) chownSync(path, 0, 0);
  chmodSync(path, mode);
}
