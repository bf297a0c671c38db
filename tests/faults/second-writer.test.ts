import { dirname } from 'node:path';
import { describe, expect, test } from 'vitest';
import { openBook } from '#electron/book/open-book.ts';
import { folderBytes, newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, changingTank, tankOf, today } from '#tests/electron/book/sample-records.ts';
import { startChild } from '#tests/faults/child.ts';

const t07 = tankOf('T07');
const begin = adding('begin', { kind: 'tank', record: t07 });

describe('a book that another program holds', () => {
  test.each(['for writing', 'whole'])(
    'held %s, it is open for looking, and is written once it is let go',
    async (how) => {
      const book = newBook(begin);
      book.close();
      const holder = startChild('hold-book.ts', book.path, how);
      await holder.nextLine();
      const looked = reopen(book.path);
      const during = [looked.records().tank.get('T07'), looked.apply(changingTank(t07, { note: 'x' }), 1)];
      const [held, notes] = [looked.looking?.isStale(), looked.notes];
      holder.process.stdin?.end();
      await holder.end();

      expect(during).toEqual([t07, { ok: false, fault: { kind: 'locked' } }]);
      expect([held, notes, looked.looking?.isStale()]).toEqual([
        false,
        [{ kind: 'looking', fault: { kind: 'locked' } }],
        true,
      ]);
      looked.close();
      const again = reopen(book.path);
      expect([again.looking, valueOf(again.apply(changingTank(t07, { note: 'x' }), 1)).revision]).toEqual([
        undefined,
        2,
      ]);
    },
  );

  test('that was open before goes on being read, and is written again once it is let go', async () => {
    const book = newBook(begin);
    const holder = startChild('hold-book.ts', book.path);
    await holder.nextLine();
    const during = [book.apply(changingTank(t07, { note: 'x' }), 1), book.undo(), book.records().tank.get('T07')];
    holder.process.stdin?.end();
    await holder.end();

    expect(during).toEqual([{ ok: false, fault: { kind: 'locked' } }, { ok: false, fault: { kind: 'locked' } }, t07]);
    expect(valueOf(book.apply(changingTank(t07, { note: 'x' }), 1)).revision).toBe(2);
  });

  test('looking at it changes nothing in its folder', async () => {
    const book = newBook(begin);
    book.close();
    const holder = startChild('hold-book.ts', book.path);
    await holder.nextLine();
    const before = Object.keys(folderBytes(dirname(book.path)));
    valueOf(openBook(book.path, { today })).close();

    expect(Object.keys(folderBytes(dirname(book.path)))).toEqual(before);
  });
});
