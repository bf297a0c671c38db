import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';
import type { Refusal } from '#shared-calc/contract/channels.ts';
import type { Result } from '#shared-calc/result.ts';
import { ask, jobOf, recordsOf, refused, retitled, serviceAtHand, standing } from './service-at-hand.ts';

describe('newBook', () => {
  test('a book for a workshop of one’s own has the recipe but nobody’s jobs', () => {
    const at = serviceAtHand();
    const info = ask(at, 'file.new', { name: 'Our own', start: 'house' });
    const records = recordsOf(at);

    expect(info.name).toBe('Our own.loamwright');
    expect([records.job.size, records.supplier.size, records.recipe.size > 0, records.tank.size]).toEqual([
      0,
      0,
      true,
      0,
    ]);
    expect(at.news).toEqual([{ is: 'opened', opening: info.opening }]);
  });

  test('a file that is there is never taken for a new book', () => {
    const at = serviceAtHand();
    const path = join(at.folder, 'notes.loamwright');
    writeFileSync(path, 'mine');

    expect(refused(at, 'file.new', { name: 'notes', start: 'plain' })).toEqual({
      says: `${path} is there already.`,
      readAgain: false,
    });
    expect(readFileSync(path, 'utf8')).toBe('mine');
  });
});

describe('openOther', () => {
  test('a book that cannot be opened leaves the one that lies there', () => {
    const at = serviceAtHand();
    const before = standing(at);

    expect(saidOf(at.service.files.open(join(at.folder, 'gone.loamwright')))).toMatch(/^There is no book at /);
    expect(standing(at)).toEqual(before);
  });

  test.each(['../Workshop', 'a/b', 'a\\b', 'a\0b', ' ', '.hidden', '/etc/passwd', 'C:x'])(
    '%j is no name of a book',
    (name) => {
      expect(refused(serviceAtHand(), 'file.new', { name, start: 'plain' })?.says).toMatch(
        /^A book is named with letters/,
      );
    },
  );

  test('a book is opened only if it was offered, never by a path', () => {
    const at = serviceAtHand();
    for (const book of [at.path, '0'.repeat(16), ''])
      expect(refused(at, 'file.open', { book })?.says).toBe('This book is not there any more.');
  });

  test('the books that were open are remembered, newest first', () => {
    const at = serviceAtHand();
    const other = join(at.folder, 'Other.loamwright');
    ask(at, 'file.new', { name: 'Other.loamwright', start: 'plain' });
    expect(at.service.files.recent()).toEqual([other, at.path]);

    const [, first] = ask(at, 'file.recent', {}).books;
    expect(first).toMatchObject({ name: 'Workshop', folder: at.folder, open: false });
    ask(at, 'file.open', { book: first?.id ?? '' });
    expect(at.service.files.recent()).toEqual([at.path, other]);
  });
});

describe('saveCopy', () => {
  test('a copy is a whole book of its own', () => {
    const at = serviceAtHand();
    ask(at, 'book.apply', { ...standing(at), change: retitled(at, 'Quay hall') });
    const copy = valueOf(at.service.files.saveCopy(join(at.folder, 'Copy'), { replace: false }));
    ask(at, 'book.undo', standing(at));

    expect(copy.path).toBe(join(at.folder, 'Copy.loamwright'));
    expect(jobOf(serviceAtHand(copy.path)).title).toBe('Quay hall');
    expect(jobOf(at).title).toBe('Ferry waiting hall');
  });

  test('a file is replaced only where that was asked for, and an open book never', () => {
    const at = serviceAtHand();
    const path = join(at.folder, 'Copy.loamwright');
    at.service.files.saveCopy(path, { replace: false });

    expect(saidOf(at.service.files.saveCopy(path, { replace: false }))).toBe(`${path} is there already.`);
    expect(valueOf(at.service.files.saveCopy(path, { replace: true }))).toEqual({ path });
    expect(saidOf(at.service.files.saveCopy(at.path, { replace: true }))).toBe(`${at.path} is open.`);
    expect(existsSync(at.path)).toBe(true);
  });
});

describe('takeIn', () => {
  test('a book from elsewhere is checked, moved under a free name and opened', () => {
    const at = serviceAtHand();
    ask(at, 'book.apply', { ...standing(at), change: retitled(at, 'Quay hall') });
    const part = at.service.files.partPath();
    valueOf(at.service.files.saveCopy(part, { replace: false }));
    ask(at, 'book.undo', standing(at));

    expect(valueOf(at.service.files.takeIn(part, '../../Workshop.loamwright')).path).toBe(
      join(at.folder, 'Workshop 2.loamwright'),
    );
    expect(jobOf(at).title).toBe('Quay hall');
    expect(existsSync(part)).toBe(false);
  });

  test('what is no book is refused by its name, and nothing of it stays', () => {
    const at = serviceAtHand();
    const before = standing(at);
    const part = at.service.files.partPath();
    writeFileSync(part, 'a shopping list, and no book at all');

    expect(saidOf(at.service.files.takeIn(part, 'List.loamwright'))).toBe('List.loamwright is not a book.');
    expect([standing(at), existsSync(part)]).toEqual([before, false]);
  });
});

function saidOf(done: Result<unknown, Refusal>): string | undefined {
  return done.ok ? undefined : done.fault.says;
}
