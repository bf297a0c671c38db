import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

import { ask, jobOf, recordsOf, refused, retitled, serviceAtHand, standing } from './service-at-hand.ts';

describe('newBook', () => {
  test('a book for a workshop of one’s own has the recipe but nobody’s jobs', () => {
    const at = serviceAtHand();
    const info = ask(at, 'file.new', { path: join(at.folder, 'Our own'), start: 'house' });
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

    expect(refused(at, 'file.new', { path, start: 'plain' })).toEqual({
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

    expect(refused(at, 'file.open', { path: join(at.folder, 'gone.loamwright') })?.says).toMatch(
      /^There is no book at /,
    );
    expect(standing(at)).toEqual(before);
  });

  test.each(['Workshop.loamwright', '../Workshop.loamwright', 'a\0b', ' '])('%j names no folder', (path) => {
    expect(refused(serviceAtHand(), 'file.open', { path })?.says).toMatch(
      /^Give the file with its whole folder, such as /,
    );
  });

  test('the books that were open are remembered, newest first', () => {
    const at = serviceAtHand();
    const other = join(at.folder, 'Other.loamwright');
    ask(at, 'file.new', { path: other, start: 'plain' });
    expect(ask(at, 'file.recent', {}).paths).toEqual([other, at.path]);

    ask(at, 'file.open', { path: at.path });
    expect(ask(at, 'file.recent', {}).paths).toEqual([at.path, other]);
  });
});

describe('saveCopy', () => {
  test('a copy is a whole book of its own', () => {
    const at = serviceAtHand();
    ask(at, 'book.apply', { ...standing(at), change: retitled(at, 'Quay hall') });
    const copy = ask(at, 'file.saveCopy', { path: join(at.folder, 'Copy'), replace: false });
    ask(at, 'book.undo', standing(at));

    expect(copy.path).toBe(join(at.folder, 'Copy.loamwright'));
    expect(jobOf(serviceAtHand(copy.path)).title).toBe('Quay hall');
    expect(jobOf(at).title).toBe('Ferry waiting hall');
  });

  test('a file is replaced only where that was asked for, and an open book never', () => {
    const at = serviceAtHand();
    const path = join(at.folder, 'Copy.loamwright');
    ask(at, 'file.saveCopy', { path, replace: false });

    expect(refused(at, 'file.saveCopy', { path, replace: false })?.says).toBe(`${path} is there already.`);
    expect(ask(at, 'file.saveCopy', { path, replace: true })).toEqual({ path });
    expect(refused(at, 'file.saveCopy', { path: at.path, replace: true })?.says).toBe(`${at.path} is open.`);
    expect(existsSync(at.path)).toBe(true);
  });
});
