import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { newBook, temporaryFolder, valueOf } from './book-at-hand.ts';
import { sampleLedger } from './sample-ledger.ts';
import { adding, oneOfEach } from './sample-records.ts';

const [order, ...moves] = sampleLedger;
if (!order) throw new Error('no order');
const before = oneOfEach.filter((each) => !sampleLedger.includes(each));

describe('an order that was placed', () => {
  test('is not undone, so that its number never comes back for another; what came of it is', () => {
    const book = newBook(adding('begin', ...before));
    valueOf(book.apply(adding('clay ordered', order), 1));
    valueOf(book.apply(adding('one bag in', ...moves), 2));

    expect([valueOf(book.undo()), book.undo()]).toEqual([
      { revision: 4, label: 'one bag in' },
      { ok: false, fault: { kind: 'lasting', label: 'clay ordered' } },
    ]);
    expect(book.records().order.has('O-0001')).toBe(true);
  });

  test('stays when an older backup is restored', () => {
    const book = newBook(adding('begin', ...before));
    const backup = join(temporaryFolder(), 'Backup.loamwright');
    valueOf(book.exportTo(backup));
    valueOf(book.apply(adding('clay ordered', order), 1));
    valueOf(book.restore(backup, 'restored'));

    expect([...book.records().order.keys()]).toEqual(['O-0001']);
  });
});
