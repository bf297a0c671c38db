import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { readRecent, rememberRecent } from '#electron/service/recent-books.ts';

import { temporaryFolder } from './service-at-hand.ts';

describe('rememberRecent', () => {
  test('a book is in the list once, the last one first, and ten are kept', () => {
    const folder = temporaryFolder();
    const list = join(folder, 'kept here', 'recent.json');
    const books = Array.from({ length: 12 }, (_, at) => join(folder, `${at}.loamwright`));
    for (const book of books) writeFileSync(book, '');
    for (const book of [...books, books[5] ?? '']) rememberRecent(list, book);

    expect(readRecent(list)).toEqual([5, 11, 10, 9, 8, 7, 6, 4, 3, 2].map((at) => books[at]));
  });
});

describe('readRecent', () => {
  test('books that are gone are left out', () => {
    const list = join(temporaryFolder(), 'recent.json');
    rememberRecent(list, '/nowhere/gone.loamwright');

    expect(readRecent(list)).toEqual([]);
  });

  test.each(['', 'not a list', '{"a":1}', '[1,2]'])('a list that says %j is no list', (text) => {
    const list = join(temporaryFolder(), 'recent.json');
    writeFileSync(list, text);

    expect(readRecent(list)).toEqual([]);
  });
});
