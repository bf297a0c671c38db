import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { addedJob, ask, recordsOf, refused, retitled, serviceAtHand, standing } from './service-at-hand.ts';

describe('a book whose file is removed under the open program', () => {
  test('every window is told once; no edit is taken; it is put back with all that was written, and goes on', () => {
    const at = serviceAtHand();
    ask(at, 'book.apply', { ...standing(at), change: retitled(at, 'Written before') });
    const { opening } = ask(at, 'book.info', {});
    rmSync(at.path);
    at.service.look();
    at.service.look();

    expect(at.news.filter(({ is }) => is === 'gone')).toEqual([{ is: 'gone', opening }]);
    expect(ask(at, 'book.info', {}).gone).toEqual({
      says: 'Workshop.loamwright was removed or renamed while it was open. Nothing more is written; put it back, or open another book.',
      cure: 'put back',
    });
    expect(refused(at, 'book.apply', { ...standing(at), change: addedJob(at, 'J77') })?.says).toMatch(
      /^The book was removed or renamed while it was open\./,
    );

    const back = ask(at, 'file.putBack', {});
    expect([back.gone, existsSync(at.path), recordsOf(at).job.get('J01')?.title]).toEqual([
      undefined,
      true,
      'Written before',
    ]);
    ask(at, 'book.apply', { ...standing(at), change: addedJob(at, 'J77') });
    expect(recordsOf(at).job.has('J77')).toBe(true);
  });
});

describe('a book over which a backup is copied by hand', () => {
  test('says so, and opens as the backup when asked', () => {
    const at = serviceAtHand();
    const backup = join(at.folder, 'copy.loamwright');
    at.service.files.saveCopy(backup, { replace: false });
    ask(at, 'book.apply', { ...standing(at), change: retitled(at, 'Later') });
    copyFileSync(backup, at.path);
    at.service.look();

    expect(ask(at, 'book.info', {}).gone?.cure).toBe('open what is there');
    ask(at, 'file.putBack', {});
    expect(recordsOf(at).job.get('J01')?.title).not.toBe('Later');
  });

  test('a file moved away and back again is no loss', () => {
    const at = serviceAtHand();
    renameSync(at.path, `${at.path}.away`);
    at.service.look();
    renameSync(`${at.path}.away`, at.path);
    at.service.look();

    expect(ask(at, 'book.info', {}).gone).toBeUndefined();
    ask(at, 'book.apply', { ...standing(at), change: addedJob(at, 'J77') });
  });
});
