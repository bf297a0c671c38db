import { copyFileSync, mkdirSync, readdirSync, readFileSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { lw, lwProcess, useDemoBook } from '#tests/electron/cli/run-cli.ts';

const { book, folder } = useDemoBook();

describe('a file that is no book is refused, exit 3, and left as it was', () => {
  const sql =
    (...statements: readonly string[]) =>
    (file: string) => {
      const db = new Database(file);
      for (const each of statements) db.exec(each);
      db.close();
    };

  test.each<[string, (file: string) => void, RegExp]>([
    ['a letter', (file) => writeFileSync(file, 'Dear Sir,\n'), /^\S+ is not a book\.$/],
    ['an empty file', (file) => writeFileSync(file, ''), /^\S+ is not a book but an empty file\.$/],
    [
      'a book cut off in the middle',
      (file) => truncateSync(file, Math.floor(statSync(file).size / 2)),
      /^\S+ is damaged: parts of the file cannot be read\. It was left as it is; a backup can take its place: book recover\.$/,
    ],
    [
      'a newer book',
      sql('PRAGMA user_version = 99'),
      /^\S+ was written by a newer Loamwright \(form 99, this one knows up to \d+\)\.$/,
    ],
    [
      'a database of another program',
      sql('PRAGMA application_id = 7'),
      /^\S+ is another program's file, not a book\.$/,
    ],
  ])('%s', async (name, spoil, says) => {
    const place = path.join(folder(), name.replaceAll(' ', '-'));
    mkdirSync(place);
    const file = path.join(place, 'Spoilt.loamwright');
    copyFileSync(book(), file);
    spoil(file);
    const before = readFileSync(file);
    for (const argv of [
      ['bench', '--sizes', 'T07'],
      ['needs', '--sizes', 'T07', '--json'],
      ['book', 'check'],
    ]) {
      const { code, out, err } = await lw(...argv, '--book', file);
      const said = err.trimEnd();
      const asData = { fault: { kind: 'no book', says: said } };
      expect([code, out, said]).toEqual([
        3,
        argv.includes('--json') ? `${JSON.stringify(asData)}\n` : '',
        expect.stringMatching(says),
      ]);
    }
    expect([readFileSync(file).equals(before), readdirSync(place)]).toEqual([true, ['Spoilt.loamwright']]);
  });

  test('a folder', async () => {
    const { code, err } = await lw('bench', '--sizes', 'T07', '--book', folder());
    expect([code, err]).toEqual([3, `${folder()} is not a book but a folder.\n`]);
  });

  test('another program that is writing in it: the second writer is told, and nothing is lost', () => {
    const prices = path.join(folder(), 'prices.csv');
    writeFileSync(prices, 'material,pack,unit,price,from\r\nM01,10,L,10.20,2090-04-01\r\n');
    const first = new Database(book());
    first.exec('BEGIN IMMEDIATE');
    const second = lwProcess('book', 'import-prices', prices, '--book', book());
    first.exec('ROLLBACK');
    const count = first.prepare('SELECT count(*) FROM pack_price WHERE "from" = \'2090-04-01\'').pluck().get();
    first.close();
    expect(second).toEqual({
      code: 1,
      out: '',
      err: 'Another program is writing in the book; try again when it is done.\n',
    });
    expect(count).toBe(0);
  });
});
