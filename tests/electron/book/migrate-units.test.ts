import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { reopen, temporaryFolder } from '#tests/electron/book/book-at-hand.ts';

const before = fileURLToPath(new URL('../../../fixtures/books/v18.loamwright', import.meta.url));

describe('the step to version 19', () => {
  const opened = (shown: object) => {
    const path = join(temporaryFolder(), 'Shop.loamwright');
    copyFileSync(before, path);
    const db = new Database(path);
    db.prepare('UPDATE workshop SET units_shown = ?').run(JSON.stringify(shown));
    db.close();
    const book = reopen(path);
    const { units, dateOrder, paper, unitsShown } = book.records().workshop.get('workshop') ?? {};
    book.close();
    return { units, dateOrder, paper, unitsShown };
  };

  test('a workshop that sees everything in US units is a US one, with what it has chosen besides', () => {
    const shown = { length: 'in', volume: 'qt', mass: 'lb', temperature: 'degF', pressure: 'psi' };

    expect(opened(shown)).toEqual({
      units: 'us',
      dateOrder: 'mdy',
      paper: 'Letter',
      unitsShown: { volume: 'qt', pressure: 'psi' },
    });
  });

  test('any other keeps its units as they are', () => {
    expect(opened({ length: 'in', volume: 'gal' })).toEqual({ unitsShown: { length: 'in', volume: 'gal' } });
  });
});
