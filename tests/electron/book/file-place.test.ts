import { copyFileSync, existsSync, readdirSync, renameSync, rmSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import type { Book } from '#electron/book/book.ts';
import { faultOf, newBook, reopen, temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, tankOf } from '#tests/electron/book/sample-records.ts';

const t07 = tankOf('T07');

/** A book with one tank, and a backup of it as it was before its note was written. */
function bookAndBackup(): { readonly book: Book; readonly backup: string } {
  const book = newBook(adding('begin', { kind: 'tank', record: t07 }));
  const backup = join(temporaryFolder(), 'backup.loamwright');
  valueOf(book.exportTo(backup));
  valueOf(book.apply(changingTank(t07, { note: 'first' }), 1));
  return { book, backup };
}

const noteIn = (book: Book) => book.records().tank.get('T07')?.note;

/** One edit more, on what the book says now. */
function edit(book: Book, note: string) {
  const tank = book.records().tank.get('T07') ?? t07;
  return book.apply(changingTank(tank, { note }), book.revision());
}

const ways: readonly (readonly [string, string, (book: Book, backup: string) => void])[] = [
  ['removed', 'removed', ({ path }) => rmSync(path)],
  ['renamed', 'removed', ({ path }) => renameSync(path, `${path}.old`)],
  [
    'replaced by another file',
    'replaced',
    ({ path }, backup) => {
      copyFileSync(backup, `${path}.new`);
      renameSync(`${path}.new`, path);
    },
  ],
  ['written over by a backup', 'written over', ({ path }, backup) => copyFileSync(backup, path)],
];

describe('a book whose file goes while it is open', () => {
  test.each(ways)('%s, takes no more edits and says so', (_, how, spoil) => {
    const { book, backup } = bookAndBackup();
    spoil(book, backup);

    expect(faultOf(edit(book, 'lost?'))).toEqual({ kind: 'gone', how });
    expect(faultOf(book.undo())).toEqual({ kind: 'gone', how });
    expect(book.gone()).toBe(how);
  });

  test.each(ways)('%s after a second of quiet, takes no more edits either', (_, how, spoil) => {
    const { book, backup } = bookAndBackup();
    book.settle(0);
    spoil(book, backup);

    expect(faultOf(edit(book, 'lost?'))).toEqual({ kind: 'gone', how });
  });

  test('a backup copied over it by hand is what the file says from then on', () => {
    const { book, backup } = bookAndBackup();
    copyFileSync(backup, book.path);
    expect(faultOf(edit(book, 'lost?'))).toBeDefined();
    book.close();

    const again = reopen(book.path);
    expect([noteIn(again), again.check()]).toEqual([t07.note, expect.objectContaining({ ok: true })]);
    expect(again.check()).toMatchObject({ value: { sound: true } });
  });

  test('a backup copied over it by hand is noticed, though another window has written before', () => {
    const { book, backup } = bookAndBackup();
    const other = reopen(book.path);
    valueOf(edit(other, 'by the other'));
    expect([noteIn(book), book.gone()]).toEqual(['by the other', undefined]);
    copyFileSync(backup, book.path);

    expect([book.gone(), faultOf(edit(book, 'lost?'))]).toEqual([
      'written over',
      { kind: 'gone', how: 'written over' },
    ]);
  });

  test('what another window writes and settles is no loss', () => {
    const { book } = bookAndBackup();
    const other = reopen(book.path);
    for (const note of ['one', 'two', 'three']) {
      valueOf(edit(other, note));
      other.settle(0);
      expect(book.gone()).toBeUndefined();
      valueOf(edit(book, `${note}, answered`));
      expect(other.gone()).toBeUndefined();
      book.settle(0);
      expect([book.gone(), other.gone()]).toEqual([undefined, undefined]);
    }
    expect(noteIn(other)).toBe('three, answered');
  });
});

describe('a book whose program was killed', () => {
  /** The files as a killed program leaves them: the last edits are in the log alone. */
  function killed(): { readonly path: string; readonly backup: string } {
    const { book, backup } = bookAndBackup();
    for (let nth = 0; nth < 40; nth += 1) valueOf(edit(book, `edit ${nth}`));
    const path = join(temporaryFolder(), 'Killed.loamwright');
    for (const end of ['', '-wal', '-shm']) copyFileSync(book.path + end, path + end);
    return { path, backup };
  }

  test('opens with its last edit', () => {
    expect(noteIn(reopen(killed().path))).toBe('edit 39');
  });

  test.each([
    ['with', true],
    ['without', false],
  ])(
    'and was written over by a backup, opens as the backup; the log, %s its index, is put aside and named',
    (_, index) => {
      const { path, backup } = killed();
      copyFileSync(backup, path);
      if (!index) rmSync(`${path}-shm`);
      const book = reopen(path);
      const aside = book.notes.flatMap((note) => (note.kind === 'log-aside' ? [note.file] : []));

      expect([noteIn(book), aside.map((file) => existsSync(file))]).toEqual([t07.note, [true]]);
      valueOf(edit(book, 'goes on'));
      expect(book.check()).toMatchObject({ value: { sound: true } });
    },
  );
});

describe('settle', () => {
  test('at rest the one file is the whole book', () => {
    const { book } = bookAndBackup();
    const copyNote = () => {
      const copy = join(temporaryFolder(), 'copy.loamwright');
      copyFileSync(book.path, copy);
      return noteIn(reopen(copy));
    };
    const before = copyNote();
    book.settle(0);

    expect([before, copyNote()]).toEqual([t07.note, 'first']);
    expect(statSync(`${book.path}-wal`).size).toBe(0);
  });
});

test('a log that was written just now is left for the next edit', () => {
  const { book } = bookAndBackup();
  book.settle();
  expect(statSync(`${book.path}-wal`).size).toBeGreaterThan(0);
});

describe('putBack', () => {
  test.each(ways.slice(0, 3))('%s, it is put back from what is open, and goes on', (_, how, spoil) => {
    const { book, backup } = bookAndBackup();
    spoil(book, backup);
    expect(book.gone()).toBe(how);
    const { aside } = valueOf(book.putBack());
    book.close();

    const again = reopen(book.path);
    expect(noteIn(again)).toBe('first');
    valueOf(edit(again, 'second'));
    expect(again.check()).toMatchObject({ value: { sound: true } });
    expect(aside !== undefined).toBe(how === 'replaced');
    expect(aside === undefined || existsSync(aside)).toBe(true);
    expect(readdirSync(dirname(book.path)).filter((name) => name.includes('.part'))).toEqual([]);
  });

  test('a file that was written over is not put back: what is open is no whole book any more', () => {
    const { book, backup } = bookAndBackup();
    copyFileSync(backup, book.path);

    expect(faultOf(book.putBack())).toEqual({ kind: 'gone', how: 'written over' });
  });
});
