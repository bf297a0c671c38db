import { existsSync, mkdirSync, readdirSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { listBackups, superseded } from '#electron/book/backups.ts';
import { addDays } from '#shared-calc/calendar/day.ts';
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
      Array.from({ length: 14 }, (_, nth) => day(16 - nth)),
    );
  });

  test('other files in the folder are neither listed nor removed', () => {
    const path = closedBook();
    const folder = join(dirname(path), 'Small workshop backups');
    mkdirSync(folder);
    const others = ['Other 2027-03-01.loamwright', 'Small workshop 2027-03-01.txt', 'Small workshop spring.loamwright'];
    for (const name of others) writeFileSync(join(folder, name), '');
    for (let nth = 1; nth <= 15; nth += 1) openOn(path, day(nth));

    expect(listBackups(path).length).toBe(14);
    expect(readdirSync(folder)).toEqual(expect.arrayContaining(others));
  });

  test('a book opens though its backup cannot be made, and says so', () => {
    const path = closedBook();
    writeFileSync(join(dirname(path), 'Small workshop backups'), 'in the way');

    expect(openOn(path, day(10))).toEqual([
      { kind: 'backup-failed', fault: expect.objectContaining({ kind: 'disk' }) as unknown },
    ]);
  });

  test('a book that was altered behind its journal is not backed up, and its sound backups stay', () => {
    const path = closedBook();
    openOn(path, day(1));
    const db = new Database(path);
    db.exec("UPDATE tank SET note = 'altered' WHERE id = 'T07'");
    db.close();

    expect(openOn(path, day(2))).toEqual([
      { kind: 'backup-unsound', findings: 2 },
      { kind: 'altered', rows: [{ table: 'tank', key: 'T07' }] },
    ]);
    expect(listBackups(path).map((backup) => backup.day)).toEqual([day(1)]);
  });

  test('backup and book are for their owner alone', () => {
    const path = closedBook();
    openOn(path, day(1));
    const [backup] = listBackups(path);
    const mode = (file = '') => (statSync(file).mode & 0o777).toString(8);

    expect([mode(path), mode(backup?.file), mode(dirname(backup?.file ?? ''))]).toEqual(['600', '600', '700']);
  });

  test('what a killed program left unfinished an hour ago is removed, what may still be written is not', () => {
    const path = closedBook();
    const folder = join(dirname(path), 'Small workshop backups');
    mkdirSync(folder);
    const left = (pid: number) => join(folder, `.Small workshop ${day(1)}.loamwright.${pid}.part`);
    for (const pid of [1, 2]) writeFileSync(left(pid), '');
    utimesSync(left(1), new Date(0), new Date(0));
    openOn(path, day(1));

    expect([existsSync(left(1)), existsSync(left(2))]).toEqual([false, true]);
  });
});

describe('superseded', () => {
  test('of two years of days stay the last 14, then one a week for 8 weeks, then one a month for 12', () => {
    const daily = Array.from({ length: 730 }, (_, nth) => ({ day: addDays('2027-03-10', -nth) }));
    const gone = new Set(superseded(daily));
    const stay = daily.filter((each) => !gone.has(each)).map((each) => each.day);

    expect(stay.slice(14)).toEqual(
      ['2027-02-21', '2027-02-14', '2027-02-07', '2027-01-31', '2027-01-24'].concat(
        ['2026-12-31', '2026-11-30', '2026-10-31', '2026-09-30', '2026-08-31'],
        ['2026-07-31', '2026-06-30', '2026-05-31', '2026-04-30'],
      ),
    );
  });
});
