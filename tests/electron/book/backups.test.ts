import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { daysMemo, listBackups } from '#electron/book/backups.ts';
import { newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, oneOfEach, sortRecords, tankOf } from '#tests/electron/book/sample-records.ts';

function closedBook(): string {
  const book = newBook(adding('begin', ...oneOfEach));
  book.close();
  return book.path;
}

function openOn(path: string, today: string) {
  const book = reopen(path, { today, backups: true });
  book.close();
  return book.notes;
}

const day = (nth: number) => `2027-03-${String(nth).padStart(2, '0')}`;

describe('listBackups', () => {
  test('a book that was never opened has none', () => {
    expect(listBackups(closedBook())).toEqual([]);
  });

  test('the first opening of a day makes one, the second does not', () => {
    const path = closedBook();
    const file = join(dirname(path), 'Small workshop backups', 'Small workshop 2027-03-10.loamwright');

    expect([openOn(path, day(10)), openOn(path, day(10))]).toEqual([[{ kind: 'backed-up', file }], []]);
    expect(listBackups(path)).toEqual([
      { file, day: day(10), beforeMigrationFrom: undefined, bytes: expect.any(Number) as unknown },
    ]);
    expect(readdirSync(dirname(file))).toEqual([basename(file)]);
  });

  test('a backup is a whole book, as it was before the day’s first edit', () => {
    const path = closedBook();
    const book = reopen(path, { backups: true });
    const before = sortRecords(book.records());
    valueOf(book.apply(changingTank(book.records().tank.get('T07') ?? tankOf('T07'), { note: 'later' }), 1));
    const backup = reopen(listBackups(path)[0]?.file ?? '');

    expect(sortRecords(backup.records())).toEqual(before);
    expect(backup.check()).toMatchObject({ value: { sound: true } });
  });

  test('the last fourteen days are kept, newest first', () => {
    const path = closedBook();
    for (let nth = 1; nth <= 16; nth += 1) openOn(path, day(nth));

    expect(listBackups(path).map((backup) => backup.day)).toEqual(
      Array.from({ length: daysMemo }, (_, nth) => day(16 - nth)),
    );
  });

  test('other files in the folder are neither listed nor removed', () => {
    const path = closedBook();
    const folder = join(dirname(path), 'Small workshop backups');
    mkdirSync(folder);
    const others = ['Other 2027-03-01.loamwright', 'Small workshop 2027-03-01.txt', 'Small workshop spring.loamwright'];
    for (const name of others) writeFileSync(join(folder, name), '');
    for (let nth = 1; nth <= 15; nth += 1) openOn(path, day(nth));

    expect(listBackups(path).length).toBe(daysMemo);
    expect(readdirSync(folder)).toEqual(expect.arrayContaining(others));
  });

  test('a book opens though its backup cannot be made, and says so', () => {
    const path = closedBook();
    writeFileSync(join(dirname(path), 'Small workshop backups'), 'in the way');

    expect(openOn(path, day(10))).toEqual([
      { kind: 'backup-failed', fault: expect.objectContaining({ kind: 'disk' }) as unknown },
    ]);
  });
});
