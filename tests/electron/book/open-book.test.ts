import { copyFileSync, mkdirSync, readFileSync, readdirSync, symlinkSync, truncateSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { migrations } from '#electron/book/migrations/all.ts';
import { openBook } from '#electron/book/open-book.ts';
import type { OpeningNote } from '#electron/book/open-options.ts';
import { faultOf, folderBytes, newBook, reopen, temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, listRecords, oneOfEach, tankOf, today } from '#tests/electron/book/sample-records.ts';

const options = { today, backups: false };

/** A closed book, to be damaged. */
function closedBook(): string {
  const book = newBook(adding('begin', ...oneOfEach));
  book.close();
  return book.path;
}

function alter(path: string, ...sql: readonly string[]): void {
  const db = new Database(path).unsafeMode();
  for (const each of sql) db.exec(each);
  db.close();
}

/** At every change of the workshop, every price in the file becomes one coin. */
const hidden = (name: string) =>
  `CREATE TRIGGER ${name} AFTER UPDATE ON workshop BEGIN UPDATE pack_price SET price_coins = 1; END`;

interface Spoilt {
  readonly says: string;
  readonly spoil: (path: string) => void;
  readonly fault: unknown;
}

const spoilt: readonly Spoilt[] = [
  { says: 'a letter', spoil: (path) => writeFileSync(path, 'Dear Sir'), fault: { kind: 'not-a-book', what: 'other' } },
  {
    says: 'a long letter',
    spoil: (path) => writeFileSync(path, 'Dear Sir '.repeat(1000)),
    fault: { kind: 'not-a-book', what: 'other' },
  },
  { says: 'an empty file', spoil: (path) => writeFileSync(path, ''), fault: { kind: 'not-a-book', what: 'empty' } },
  {
    says: 'a database of another program',
    spoil: (path) => alter(path, 'PRAGMA application_id = 7'),
    fault: { kind: 'foreign', applicationId: 7 },
  },
  {
    says: 'a book of a newer program',
    spoil: (path) => alter(path, 'PRAGMA user_version = 99'),
    fault: { kind: 'newer', found: 99, newest: migrations.length },
  },
  {
    says: 'a book cut off after its first page',
    spoil: (path) => truncateSync(path, 4096),
    fault: { kind: 'damaged', damage: { what: 'pages', says: expect.any(Array) as unknown } },
  },
  {
    says: 'a book cut off in its header',
    spoil: (path) => truncateSync(path, 60),
    fault: { kind: 'damaged', damage: { what: 'pages', says: [] } },
  },
  {
    says: 'a book with a table more',
    spoil: (path) => alter(path, 'CREATE TABLE stray (x)'),
    fault: { kind: 'damaged', damage: { what: 'tables', names: ['stray'] } },
  },
  {
    says: 'a book with a table less',
    spoil: (path) => alter(path, 'DROP TABLE actual'),
    fault: { kind: 'damaged', damage: { what: 'tables', names: expect.arrayContaining(['actual']) as unknown } },
  },
  {
    says: 'a book with a trigger',
    spoil: (path) => alter(path, hidden('sqliteXevil')),
    fault: { kind: 'damaged', damage: { what: 'tables', names: ['sqliteXevil'] } },
  },
  {
    says: "a book with a trigger that is called as the database's own parts are",
    spoil: (path) =>
      alter(
        path,
        'PRAGMA writable_schema = ON',
        `INSERT INTO sqlite_schema VALUES ('trigger', 'sqlite_evil', 'workshop', 0, '${hidden('sqlite_evil')}')`,
      ),
    fault: { kind: 'damaged', damage: { what: 'tables', names: ['sqlite_evil'] } },
  },
  {
    says: 'a book in which a view stands in for a table',
    spoil: (path) => alter(path, 'ALTER TABLE actual RENAME TO was', 'CREATE VIEW actual AS SELECT * FROM was'),
    fault: { kind: 'damaged', damage: { what: 'tables', names: expect.arrayContaining(['actual', 'was']) as unknown } },
  },
];

describe('openBook', () => {
  test('a book opens with everything that was put in', () => {
    const path = closedBook();

    expect(listRecords(reopen(path).records())).toEqual(listRecords(newBook(adding('begin', ...oneOfEach)).records()));
  });

  test('closing leaves one file', () => {
    const path = closedBook();

    expect(readdirSync(dirname(path))).toEqual(['Small workshop.loamwright']);
  });

  test.each(spoilt)('$says is refused and left as it was', ({ spoil, fault }) => {
    const path = closedBook();
    spoil(path);
    const before = folderBytes(dirname(path));

    expect(faultOf(openBook(path, { today }))).toEqual(fault);
    expect(folderBytes(dirname(path))).toEqual(before);
  });

  test('a book with a page written over is refused and left as it was', () => {
    const path = closedBook();
    const db = new Database(path);
    const page = db.prepare("SELECT rootpage FROM sqlite_schema WHERE name = 'tank'").pluck().get() as number;
    db.close();
    const bytes = readFileSync(path);
    bytes.fill(0x5a, (page - 1) * 4096, page * 4096);
    writeFileSync(path, bytes);

    expect(faultOf(openBook(path, { today }))).toMatchObject({ kind: 'damaged', damage: { what: 'pages' } });
    expect(folderBytes(dirname(path))).toEqual({ [path]: bytes.toString('base64') });
  });

  test('a record that does not say what its kind must say is named', () => {
    const path = closedBook();
    alter(path, "UPDATE tank SET shape = 'sphere' WHERE id = 'T07'");

    expect(faultOf(openBook(path, options))).toEqual({
      kind: 'damaged',
      damage: {
        what: 'records',
        records: [{ kind: 'tank', id: 'T07', issues: [expect.objectContaining({ field: 'shape' }) as unknown] }],
      },
    });
  });

  test('a folder, a name that is not there and a name below a file are refused', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'a.loamwright'));
    writeFileSync(join(folder, 'file'), '');
    const faults = ['a.loamwright', 'b.loamwright', 'file/c.loamwright'].map((name) =>
      faultOf(openBook(join(folder, name), options)),
    );

    expect(faults).toEqual([{ kind: 'not-a-book', what: 'folder' }, { kind: 'missing' }, { kind: 'missing' }]);
    expect(readdirSync(folder).sort()).toEqual(['a.loamwright', 'file']);
  });

  test('a book is found through another name for it', () => {
    const path = closedBook();
    const link = join(temporaryFolder(), 'link.loamwright');
    symlinkSync(path, link);

    expect(reopen(link).path).toBe(path);
  });

  test('a book that was copied together with what had not been taken in yet has it all', () => {
    const book = newBook(adding('begin', ...oneOfEach));
    const later = valueOf(
      book.apply(changingTank(book.records().tank.get('T07') ?? tankOf('T07'), { note: 'late' }), 1),
    );
    const copy = join(temporaryFolder(), 'copy.loamwright');
    copyFileSync(book.path, copy);
    copyFileSync(`${book.path}-wal`, `${copy}-wal`);

    expect(reopen(copy).records().tank.get('T07')?.note).toBe('late');
    expect(later.revision).toBe(2);
  });

  test.each([
    { says: 'its log', ends: ['-wal'] },
    { says: 'its log and what goes with it', ends: ['-wal', '-shm'] },
  ])('a damaged book that was left with $says is refused, and book and log stay as they were', ({ ends }) => {
    const book = newBook(adding('begin', ...oneOfEach));
    valueOf(book.apply(adding('later', { kind: 'tank', record: tankOf('T08') }), 1));
    const copy = join(temporaryFolder(), 'copy.loamwright');
    for (const end of ['', ...ends]) copyFileSync(book.path + end, copy + end);
    truncateSync(copy, 40 * 4096);
    const before = folderBytes(dirname(copy));

    expect(faultOf(openBook(copy, { today }))).toMatchObject({ kind: 'damaged' });
    const after = folderBytes(dirname(copy));
    expect(Object.keys(after)).toEqual(Object.keys(before));
    expect([after[copy], after[`${copy}-wal`]]).toEqual([before[copy], before[`${copy}-wal`]]);
  });

  test('an altered issued quote is named when the book is opened', () => {
    const path = closedBook();
    const trigger = new Database(path).prepare("SELECT sql FROM sqlite_schema WHERE name = 'issued_quote_stays'");
    const again = trigger.pluck().get() as string;
    alter(path, 'DROP TRIGGER issued_quote_stays', "UPDATE issued_quote SET body = 'cheaper'", again);

    expect(reopen(path).notes).toEqual<OpeningNote[]>([{ kind: 'issued-altered', quotes: ['Q1'] }]);
  });

  test('a book in a folder that other machines share is noticed', () => {
    const folder = join(temporaryFolder(), 'Shared drive');
    mkdirSync(folder);
    const path = join(folder, 'Shop.loamwright');

    expect(newBook(undefined, path).notes).toEqual<OpeningNote[]>([
      { kind: 'sync-folder', folder: { conflictCopies: [], folders: [folder] } },
    ]);
  });
});
