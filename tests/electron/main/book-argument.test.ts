import { resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

import { bookArgument } from '#electron/main/book-argument.ts';

const here = resolve('books');

describe('bookArgument', () => {
  test.each([
    ['none', ['loamwright'], undefined],
    ['a file that was double-clicked', ['loamwright', 'ferry.loamwright'], resolve(here, 'ferry.loamwright')],
    ['the option', ['shell', '.', '--book', 'ferry.loamwright'], resolve(here, 'ferry.loamwright')],
    ['the option without its file', ['shell', '.', '--book'], undefined],
    ['the option before another', ['shell', '--book', '--other'], undefined],
    ['the program itself is no book', ['kept.loamwright'], undefined],
  ])('%s', (_, argv, book) => {
    expect(bookArgument(argv, here)).toBe(book);
  });
});
