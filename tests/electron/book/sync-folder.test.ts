import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { syncFolderOf } from '#electron/book/sync-folder.ts';
import { temporaryFolder } from '#tests/electron/book/book-at-hand.ts';

describe('syncFolderOf', () => {
  test('an ordinary folder shows no signs', () => {
    const folder = temporaryFolder();
    for (const name of [
      'Shop.loamwright',
      'Shop spring.loamwright',
      'Shop backups',
      '.hidden',
      'conflict of 2026.txt',
    ]) {
      writeFileSync(join(folder, name), '');
    }

    expect(syncFolderOf(join(folder, 'Shop.loamwright'))).toBe(undefined);
  });

  test.each([
    'Shop (conflicted copy 2027-03-10).loamwright',
    "Shop (Marsh's conflicted copy).loamwright",
    'Shop.sync-conflict-20270310-101500-ABCDEFG.loamwright',
    'Shop_conflict-20270310.loamwright',
  ])('"%s" is a copy made where two machines wrote at once', (name) => {
    const folder = temporaryFolder();
    writeFileSync(join(folder, name), '');

    expect(syncFolderOf(join(folder, 'Shop.loamwright'))).toEqual({ conflictCopies: [name], folders: [] });
  });

  test.each(['.stfolder', '.sync', '._sync_0123.db', '.csync_journal.db'])(
    'a folder that holds "%s" is kept alike elsewhere, and so is what lies below it',
    (marker) => {
      const folder = temporaryFolder();
      mkdirSync(join(folder, 'books'));
      writeFileSync(join(folder, marker), '');

      expect(syncFolderOf(join(folder, 'books', 'Shop.loamwright'))).toEqual({ conflictCopies: [], folders: [folder] });
    },
  );

  test.each(['Shared Drive', 'My cloud', 'Sync', 'Shop sync'])('so is a folder called "%s"', (name) => {
    const folder = join(temporaryFolder(), name);
    mkdirSync(folder);

    expect(syncFolderOf(join(folder, 'Shop.loamwright'))).toEqual({ conflictCopies: [], folders: [folder] });
  });

  test.each(['Driveway', 'Clouds over Brackenlume', 'Resync'])('a folder called "%s" is an ordinary one', (name) => {
    const folder = join(temporaryFolder(), name);
    mkdirSync(folder);

    expect(syncFolderOf(join(folder, 'Shop.loamwright'))).toBe(undefined);
  });
});
