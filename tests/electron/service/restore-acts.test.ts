import { describe, expect, test } from 'vitest';

import { addedJob, ask, jobOf, recordsOf, refused, retitled, serviceAtHand, standing } from './service-at-hand.ts';

describe('restoreBackup', () => {
  test('a backup is weighed, brought back as one edit, and that edit can be undone', () => {
    const at = serviceAtHand();
    ask(at, 'book.apply', { ...standing(at), change: retitled(at, 'Quay hall') });
    ask(at, 'book.apply', { ...standing(at), change: addedJob(at, 'J90') });
    const { backups } = ask(at, 'file.backups', {});
    const [backup] = backups;

    expect(backups).toEqual([{ file: 'Workshop 2027-03-10.loamwright', day: '2027-03-10', bytes: backup?.bytes }]);
    const file = backup?.file ?? '';
    expect(ask(at, 'file.previewBackup', { file })).toEqual({
      differences: [{ kind: 'job', added: 0, changed: 1, removed: 1 }],
      kept: [],
    });
    const restored = ask(at, 'file.restore', { ...standing(at), file });
    expect([restored.info.revision, restored.info.undo]).toEqual([4, 'backup of 2027-03-10 brought back']);
    expect(restored.change?.removed.map(({ record }) => record.id)).toEqual(['J90']);
    expect(jobOf(at).title).toBe('Ferry waiting hall');

    ask(at, 'book.undo', standing(at));
    expect([jobOf(at).title, recordsOf(at).job.has('J90')]).toEqual(['Quay hall', true]);
  });

  test.each(['../Workshop.loamwright', '/etc/passwd', 'Workshop 2020-01-01.loamwright'])(
    '%s is no backup of this book',
    (file) => {
      const at = serviceAtHand();

      expect(refused(at, 'file.previewBackup', { file })?.says).toBe(`There is no backup called ${file}.`);
      expect(refused(at, 'file.restore', { ...standing(at), file })?.says).toBe(`There is no backup called ${file}.`);
    },
  );
});
