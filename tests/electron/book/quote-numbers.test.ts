import { describe, expect, test } from 'vitest';
import { newBook, reopen, valueOf } from '#tests/electron/book/book-at-hand.ts';
import { adding, quoteOf, removing } from '#tests/electron/book/sample-records.ts';

const issue = (id: string, number: string, revision = 'A') =>
  ({ kind: 'issuedQuote', record: quoteOf(id, number, { revision }) }) as const;

describe('Book.nextQuote', () => {
  test('the first quote of a book is Q-0001, revision A', () => {
    expect(newBook().nextQuote()).toEqual({ number: 'Q-0001', revision: 'A' });
  });

  test('a number is not given again, even after its quote was removed and the book closed', () => {
    const book = newBook(adding('begin', issue('a', 'Q-0001')));
    valueOf(book.apply(adding('issue', issue('b', 'Q-0002')), 1));
    valueOf(book.apply(removing('remove', issue('b', 'Q-0002')), 2));
    book.close();

    expect(reopen(book.path).nextQuote()).toEqual({ number: 'Q-0003', revision: 'A' });
  });

  test.each([
    { had: ['A'], next: 'B' },
    { had: ['A', 'B', 'Z'], next: 'AA' },
    { had: ['AZ'], next: 'BA' },
    { had: [], next: 'A' },
  ])('after revisions $had comes $next', ({ had, next }) => {
    const book = newBook(adding('begin', ...had.map((revision) => issue(revision, 'Q-0007', revision))));

    expect(book.nextQuote('Q-0007')).toEqual({ number: 'Q-0007', revision: next });
  });

  test('a number written by hand in another way does not disturb the count', () => {
    const book = newBook(adding('begin', issue('a', 'Old 99'), issue('b', 'Q-0123')));

    expect(book.nextQuote()).toEqual({ number: 'Q-0124', revision: 'A' });
  });
});
