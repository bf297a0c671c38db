import Database from 'better-sqlite3';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Book } from '#electron/book/book.ts';
import { foldHistory, type JournalStep, noHistory } from '#electron/book/history.ts';
import { cutBefore } from '#electron/book/squash-journal.ts';
import { newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, oneOfEach, tankOf } from '#tests/electron/book/sample-records.ts';

/** A book of edits, each made on its day, closed again. */
function bookOf(...days: readonly string[]): string {
  const { path, close } = newBook(adding('begin', ...oneOfEach));
  close();
  for (const day of days) {
    const book = reopen(path, { now: () => `${day}T09:00:00Z` });
    noteTank(book, day);
    book.close();
  }
  return path;
}

function noteTank(book: Book, note: string): void {
  valueOf(book.apply(changingTank(book.records().tank.get('T07') ?? tankOf('T07'), { note }), book.revision()));
}

function journalOf(path: string): readonly unknown[] {
  const db = new Database(path, { readonly: true });
  try {
    return db.prepare('SELECT revision, kind, label FROM journal ORDER BY revision').raw().all();
  } finally {
    db.close();
  }
}

describe('opening a book squashes the edits of more than a year ago', () => {
  test('one row stands for them; records, revision and the undo of later edits are as before, and the book is sound', () => {
    const path = bookOf('2027-03-12', '2027-04-01', '2027-04-02', '2028-03-09', '2028-03-10');
    const before = reopen(path);
    const [records, revision] = [before.records(), before.revision()];
    before.close();
    const book = reopen(path, { today: '2028-04-02', backups: true });

    expect(journalOf(path)).toEqual([
      [1, 'begin', 'begin'],
      [3, 'squash', '2 edits before 2027-04-02'],
      [4, 'do', expect.any(String)],
      [5, 'do', expect.any(String)],
      [6, 'do', expect.any(String)],
    ]);
    expect([book.records(), book.revision()]).toEqual([records, revision]);
    expect(book.check()).toMatchObject({ value: { sound: true, findings: [] } });
    valueOf(book.undo());
    valueOf(book.undo());
    expect(book.records().tank.get('T07')?.note).toBe('2027-04-02');
    valueOf(book.undo());
    expect([book.records().tank.get('T07')?.note, book.undo()]).toEqual(['2027-04-01', { ok: true, value: 'nothing' }]);
    expect(book.check()).toMatchObject({ value: { sound: true } });
  });

  test('the edit that issued a quote stays to be read', () => {
    expect(oneOfEach.some(({ kind }) => kind === 'issuedQuote')).toBe(true);
    const path = bookOf('2027-03-12', '2027-03-13', '2027-03-14');
    reopen(path, { today: '2029-01-01', backups: true }).close();

    expect(journalOf(path)).toEqual([
      [1, 'begin', 'begin'],
      [4, 'squash', '3 edits before 2028-01-01'],
    ]);
  });

  test('it is not done where the backup of the day could not be made', () => {
    const path = bookOf('2027-03-12', '2027-03-13', '2027-03-14');
    reopen(path, { today: '2029-01-01', backups: false }).close();

    expect(journalOf(path)).toHaveLength(4);
  });

  test('squashed edits cannot be removed one by one by another program', () => {
    const path = bookOf('2027-03-12', '2027-03-13', '2027-03-14', '2028-12-31');
    reopen(path, { today: '2029-01-01', backups: true }).close();
    const db = new Database(path);

    expect(() => db.exec('DELETE FROM journal WHERE revision = 5')).toThrow('the journal is only added to');
    expect(() => db.exec("UPDATE journal SET label = 'x' WHERE revision = 5")).toThrow('the journal is only added to');
    db.close();
  });
});

describe('cutBefore', () => {
  const anyKind = fc.constantFrom<JournalStep['kind']>('do', 'do', 'do', 'undo', 'redo');
  const anySteps = fc.array(fc.tuple(anyKind, fc.integer({ min: 0, max: 9 })), { maxLength: 40 });

  test('without the edits up to the cut, the later ones are undone and redone just the same', () => {
    fc.assert(
      fc.property(anySteps, fc.nat({ max: 40 }), (drawn, upTo) => {
        const steps = drawn.map(([kind, nth], at): JournalStep => ({
          revision: at + 1,
          kind,
          label: '',
          lasting: kind === 'do' && nth === 0,
        }));
        const cut = cutBefore(steps, Math.min(upTo, steps.length));
        const squash: JournalStep = { revision: cut, kind: 'squash', label: '', lasting: true };
        const whole = foldHistory(noHistory, steps);
        const short = foldHistory(noHistory, [squash, ...steps.filter(({ revision }) => revision > cut)]);
        const later = (of: readonly { readonly revision: number }[]) => of.filter(({ revision }) => revision > cut);

        expect(cut).toBeLessThanOrEqual(upTo);
        expect([short.past, later(short.future)]).toEqual([later(whole.past), later(whole.future)]);
      }),
      { numRuns: 500 },
    );
  });
});
