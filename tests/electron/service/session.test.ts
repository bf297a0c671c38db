import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';

import { openBook } from '#electron/book/open-book.ts';
import { openSession } from '#electron/service/session.ts';
import { bookAtHand } from './service-at-hand.ts';

describe('openSession', () => {
  test('a book that lies open over midnight has its backup on the new day too', () => {
    const path = bookAtHand();
    let today = '2027-03-10';
    const book = openBook(path, { today });
    if (!book.ok) throw new Error(book.fault.kind);
    onTestFinished(book.value.close);
    const recentFile = join(dirname(path), 'recent.json');
    const session = openSession(book.value, { today: () => today, onNews: () => undefined, recentFile });
    session.look();
    today = '2027-03-11';
    session.look();

    expect(readdirSync(join(dirname(path), 'Workshop backups')).sort()).toEqual([
      'Workshop 2027-03-10.loamwright',
      'Workshop 2027-03-11.loamwright',
    ]);
    expect(session.info().value.today).toBe('2027-03-11');
  });
});
