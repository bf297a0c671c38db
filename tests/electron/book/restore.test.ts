import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { faultOf, newBook, reopen, temporaryFolder, valueOf } from '#tests/electron/book/book-at-hand.ts';
import {
  adding,
  changingTank,
  jobOf,
  listRecords,
  oneOfEach,
  quoteOf,
  removing,
  sortRecords,
  supplierOf,
  tankOf,
} from '#tests/electron/book/sample-records.ts';

function bookWithBackup() {
  const book = newBook(adding('begin', ...oneOfEach));
  const backup = join(temporaryFolder(), 'backup.loamwright');
  valueOf(book.exportTo(backup));
  return { book, backup, before: sortRecords(book.records()) };
}

const t07 = oneOfEach.find((each) => each.kind === 'tank')?.record ?? tankOf('T07');
const plant = oneOfEach.find((each) => each.kind === 'plant') ?? oneOfEach[0];

describe('Book.previewRestore', () => {
  test('what a backup would change is counted before anything changes', () => {
    const { book, backup } = bookWithBackup();
    valueOf(book.apply(changingTank(t07, { note: 'later' }), 1));
    valueOf(book.apply(adding('add', { kind: 'supplier', record: supplierOf('S2') }), 2));
    if (plant) valueOf(book.apply(removing('remove', plant), 3));

    expect(valueOf(book.previewRestore(backup))).toEqual({
      counts: {
        supplier: { added: 0, changed: 0, removed: 1 },
        tank: { added: 0, changed: 1, removed: 0 },
        plant: { added: 1, changed: 0, removed: 0 },
      },
      kept: [],
    });
    expect(book.revision()).toBe(4);
  });

  test('a backup of the book as it is changes nothing', () => {
    const { book, backup } = bookWithBackup();

    expect(valueOf(book.previewRestore(backup))).toEqual({ counts: {}, kept: [] });
  });
});

describe('Book.restore', () => {
  test('a backup is brought back as one edit, which can be undone', () => {
    const { book, backup, before } = bookWithBackup();
    valueOf(book.apply(changingTank(t07, { note: 'later' }), 1));
    if (plant) valueOf(book.apply(removing('remove', plant), 2));
    const later = sortRecords(book.records());

    expect(valueOf(book.restore(backup, 'restore Monday'))).toEqual({ revision: 4, label: 'restore Monday' });
    expect(sortRecords(book.records())).toEqual(before);
    valueOf(book.undo());
    expect(sortRecords(book.records())).toEqual(later);
  });

  test('quotes issued since then stay, with the job and recipe they are for, and their numbers stay used', () => {
    const { book, backup, before } = bookWithBackup();
    const recipe = { kind: 'recipe', record: { id: 'H9', title: 'New', note: '' } } as const;
    const job = { kind: 'job', record: jobOf('J09', { recipe: 'H9' }) } as const;
    const quote = { kind: 'issuedQuote', record: quoteOf('Q2', 'Q-0002', { job: 'J09' }) } as const;
    valueOf(book.apply(adding('issue', recipe, job, quote, { kind: 'job', record: jobOf('J10') }), 1));

    expect(valueOf(book.previewRestore(backup))).toEqual({
      counts: { job: { added: 0, changed: 0, removed: 1 } },
      kept: [
        { kind: 'issuedQuote', id: 'Q2' },
        { kind: 'job', id: 'J09' },
        { kind: 'recipe', id: 'H9' },
      ],
    });
    valueOf(book.restore(backup, 'restore'));
    expect(listRecords(book.records())['issuedQuote']).toEqual([quoteOf('Q1', 'Q-0001', { job: 'J01' }), quote.record]);
    expect([...book.records().job.keys()]).toEqual(['J01', 'J09']);
    expect(sortRecords(book.records())['tank']).toEqual(before['tank']);
    expect(book.nextQuote()).toEqual({ number: 'Q-0003', revision: 'A' });
  });

  test('what is no backup, gone or open is refused', () => {
    const { book } = bookWithBackup();
    const letter = join(temporaryFolder(), 'letter.loamwright');
    writeFileSync(letter, 'Dear Sir');
    const open = newBook();
    const faults = [letter, `${letter}.gone`, open.path, book.path].map((file) => faultOf(book.restore(file, 'x')));

    expect(faults).toEqual([
      { kind: 'not-a-book', what: 'other' },
      { kind: 'missing' },
      { kind: 'in-use' },
      { kind: 'in-use' },
    ]);
    expect(reopen(book.path).revision()).toBe(1);
  });
});
