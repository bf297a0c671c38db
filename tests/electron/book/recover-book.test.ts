import { readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { recoverBook } from '#electron/book/recover-book.ts';
import { faultOf, newBook, reopen, temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, oneOfEach, sortRecords, today } from '#tests/electron/book/sample-records.ts';

function bookWithBackup() {
  const book = newBook(adding('begin', ...oneOfEach));
  const backup = join(temporaryFolder(), 'backup.loamwright');
  valueOf(book.exportTo(backup));
  const records = sortRecords(book.records());
  book.close();
  return { path: book.path, backup, records };
}

describe('recoverBook', () => {
  test('a backup takes the place of a damaged book, which is kept beside it', () => {
    const { path, backup, records } = bookWithBackup();
    writeFileSync(path, 'spoilt');
    const aside = join(dirname(path), `Small workshop damaged ${today}.loamwright`);

    expect(recoverBook(path, backup, { today })).toEqual({ ok: true, value: { aside } });
    expect(readFileSync(aside, 'utf8')).toBe('spoilt');
    expect(sortRecords(reopen(path).records())).toEqual(records);
  });

  test('a second damaged book of one day gets a name of its own', () => {
    const { path, backup } = bookWithBackup();
    for (const words of ['first', 'second']) {
      writeFileSync(path, words);
      valueOf(recoverBook(path, backup, { today }));
    }

    expect(readdirSync(dirname(path)).sort()).toEqual([
      `Small workshop damaged ${today} 2.loamwright`,
      `Small workshop damaged ${today}.loamwright`,
      'Small workshop.loamwright',
    ]);
  });

  test('a book that is gone comes back', () => {
    const { path, backup, records } = bookWithBackup();
    rmSync(path);

    expect(recoverBook(path, backup, { today })).toEqual({ ok: true, value: { aside: undefined } });
    expect(sortRecords(reopen(path).records())).toEqual(records);
  });

  test('nothing is moved for a backup that is itself damaged, or under an open book', () => {
    const { path, backup } = bookWithBackup();
    const open = newBook();
    writeFileSync(path, 'spoilt');
    const refused = faultOf(recoverBook(open.path, backup, { today }));
    writeFileSync(backup, 'spoilt too');

    expect([refused, faultOf(recoverBook(path, backup, { today }))]).toEqual([
      { kind: 'in-use' },
      { kind: 'not-a-book', what: 'other' },
    ]);
    expect(readFileSync(path, 'utf8')).toBe('spoilt');
  });
});
