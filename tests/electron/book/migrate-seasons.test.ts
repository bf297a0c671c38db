import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { reopen, temporaryFolder } from '#tests/electron/book/book-at-hand.ts';

describe('the step to version 16', () => {
  test('the leaves that the program brings get the season of their supplier, other goods none', () => {
    const path = join(temporaryFolder(), 'Shop.loamwright');
    copyFileSync(fileURLToPath(new URL('../../../fixtures/books/demo/v3.loamwright', import.meta.url)), path);
    const book = reopen(path);
    const seasons = [...book.records().material.values()].flatMap(({ id, season }) => (season ? [[id, season]] : []));
    const winter = { from: '10-01', to: '03-31' };
    expect(seasons).toEqual([
      ['M15', winter],
      ['M16', winter],
      ['M17', winter],
    ]);
    book.close();
  });
});
