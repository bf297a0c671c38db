import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, describe, expect, test, vi } from 'vitest';

import { ownBookPath } from '#electron/book/own-book-path.ts';
import { bookToOpen, userFiles } from '#electron/host/user-files.ts';
import { rememberRecent } from '#electron/service/recent-books.ts';
import { temporaryFolder } from './host-at-hand.ts';

afterEach(() => vi.unstubAllEnvs());

describe('bookToOpen', () => {
  test('the one asked for, else the one opened last, else the user’s own', () => {
    const folder = temporaryFolder();
    const { recent } = userFiles(folder);
    const last = join(folder, 'ferry.loamwright');

    expect(bookToOpen(undefined, recent)).toBe(ownBookPath());
    writeFileSync(last, '');
    rememberRecent(recent, last);
    expect(bookToOpen(undefined, recent)).toBe(last);
    expect(bookToOpen('other.loamwright', recent)).toBe(resolve('other.loamwright'));
  });
});

describe('userFiles', () => {
  test('lie beside the user’s own book', () => {
    const { recent, lastPlace, window, log } = userFiles();
    const files = [recent, lastPlace, window, log];

    expect(files.map((file) => join(file, '..'))).toEqual(files.map(() => join(ownBookPath(), '..')));
  });
});
