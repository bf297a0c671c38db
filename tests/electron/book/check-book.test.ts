import Database from 'better-sqlite3';
import { migrations } from '#electron/book/migrations/all.ts';
import { describe, expect, test } from 'vitest';
import { checkBook, type Finding } from '#electron/book/check-book.ts';
import { newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, oneOfEach, quoteOf, tankOf } from '#tests/electron/book/sample-records.ts';

/** The findings in a book of one record each and one edit, after SQL has changed the file. */
function findingsAfter(...sql: readonly string[]): readonly Finding[] {
  const book = newBook(adding('begin', ...oneOfEach));
  const tank = book.records().tank.get('T07') ?? tankOf('T07');
  valueOf(book.apply(changingTank(tank, { note: 'edited' }), 1));
  book.close();
  const db = new Database(book.path);
  db.pragma('foreign_keys = OFF');
  for (const each of sql) db.exec(each);
  const { findings } = checkBook(db);
  db.close();
  return findings;
}

const altered = (table: string, key: string): Finding => ({ kind: 'row-altered', row: { table, key } });

interface Case {
  readonly says: string;
  readonly sql: readonly string[];
  readonly finds: readonly unknown[];
}

const cases: readonly Case[] = [
  { says: 'a book left alone', sql: [], finds: [] },
  {
    says: 'a record written past the journal',
    sql: ["UPDATE tank SET note = 'secret' WHERE id = 'T07'"],
    finds: [altered('tank', 'T07'), { kind: 'journal-differs', record: { kind: 'tank', id: 'T07' }, revision: 2 }],
  },
  {
    says: 'a record that no edit made',
    sql: ["INSERT INTO recipe (id, title, note) VALUES ('H2', '', '')"],
    finds: [altered('recipe', 'H2'), { kind: 'journal-differs', record: { kind: 'recipe', id: 'H2' }, revision: 0 }],
  },
  {
    says: 'a record that is gone without an edit',
    sql: ["DELETE FROM actual WHERE id = 'A1'"],
    finds: [altered('actual', 'A1'), { kind: 'journal-differs', record: { kind: 'actual', id: 'A1' }, revision: 1 }],
  },
  {
    says: 'a journal with a row torn out',
    sql: ['DROP TRIGGER journal_is_kept', 'DELETE FROM journal WHERE revision = 1'],
    finds: [altered('journal', '1'), { kind: 'journal-gap', rows: 1, revision: 2 }],
  },
  {
    says: 'a journal that has been written over',
    sql: ['DROP TRIGGER journal_stays', "UPDATE journal SET change = '{}' WHERE revision = 2"],
    finds: [altered('journal', '2'), { kind: 'journal-unreadable', revision: 2 }],
  },
  {
    says: 'a supplier gone from under a tank',
    sql: ["DELETE FROM supplier WHERE id = 'S1'"],
    finds: [
      altered('supplier', 'S1'),
      ...['tank T07', 'material M01', 'pack M01-10', 'pack T07-1', 'quoteLine L1', 'order O-0001'].map(
        () => expect.objectContaining({ kind: 'reference' }) as unknown,
      ),
      { kind: 'journal-differs', record: { kind: 'supplier', id: 'S1' }, revision: 1 },
    ],
  },
  {
    says: 'an issued quote made cheaper',
    sql: ['DROP TRIGGER issued_quote_stays', "UPDATE issued_quote SET body = 'cheaper'"],
    finds: [
      altered('issued_quote', 'Q1'),
      { kind: 'issued-altered', id: 'Q1', number: 'Q-0001', revision: 'A' },
      { kind: 'journal-differs', record: { kind: 'issuedQuote', id: 'Q1' }, revision: 1 },
    ],
  },
  {
    says: 'an issued quote made cheaper with a hash to match',
    sql: [
      'DROP TRIGGER issued_quote_stays',
      `UPDATE issued_quote SET body = 'cheaper', sha256 = '${quoteOf('x', 'x', { body: 'cheaper' }).sha256}'`,
    ],
    finds: [
      altered('issued_quote', 'Q1'),
      { kind: 'number-not-noted', id: 'Q1', number: 'Q-0001', revision: 'A' },
      { kind: 'journal-differs', record: { kind: 'issuedQuote', id: 'Q1' }, revision: 1 },
    ],
  },
  {
    says: 'a record that says what its kind cannot',
    sql: ["UPDATE tank SET shape = 'sphere', supplier = 'S9' WHERE id = 'T07'"],
    finds: [
      altered('tank', 'T07'),
      { kind: 'record', record: expect.objectContaining({ kind: 'tank', id: 'T07' }) as unknown },
      { kind: 'loose-row', table: 'tank', parent: 'supplier' },
    ],
  },
];

describe('checkBook', () => {
  test.each(cases)('$says', ({ sql, finds }) => {
    expect(findingsAfter(...sql)).toEqual(finds);
  });

  test('it counts what there is', () => {
    const book = newBook(adding('begin', ...oneOfEach));

    expect(book.check()).toMatchObject({
      ok: true,
      value: { sound: true, version: migrations.length, revision: 1, counts: { tank: 1, pack: 2, issuedQuote: 1 } },
    });
  });
});

describe('Book.accept', () => {
  test('a book altered by hand is sound again as it stands, and what was done before is not undone', () => {
    const made = newBook(adding('begin', ...oneOfEach));
    made.close();
    const db = new Database(made.path);
    db.exec("UPDATE tank SET note = 'by hand' WHERE id = 'T07'");
    db.close();
    const book = reopen(made.path);
    const before = book.check();
    valueOf(book.accept());

    expect([before, book.check()]).toMatchObject([{ value: { sound: false } }, { value: { sound: true } }]);
    expect([book.records().tank.get('T07')?.note, book.undo()]).toEqual(['by hand', { ok: true, value: 'nothing' }]);
    book.close();
    expect(reopen(made.path).notes).toEqual([]);
  });

  test('a backup brought back over an altered record leaves a sound book', () => {
    const made = newBook(adding('begin', ...oneOfEach));
    const backup = valueOf(made.exportTo(`${made.path}.backup`)).path;
    made.close();
    const db = new Database(made.path);
    db.exec("UPDATE tank SET note = 'rotten' WHERE id = 'T07'");
    db.close();
    const book = reopen(made.path);
    valueOf(book.restore(backup, 'brought back'));

    expect(book.records().tank.get('T07')?.note).not.toBe('rotten');
    expect(book.check()).toMatchObject({ value: { sound: true } });
  });
});
