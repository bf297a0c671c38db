import { describe, expect, test } from 'vitest';

import { sayOpeningNotes } from '#electron/service/say-opening-note.ts';

describe('sayOpeningNotes', () => {
  test('the person is told of what needs an eye, and of nothing else', () => {
    const folder = { conflictCopies: ['Workshop (conflict 2).loamwright'], folders: [] };

    expect(
      sayOpeningNotes(
        [
          { kind: 'backed-up', file: 'somewhere' },
          { kind: 'backup-failed', fault: { kind: 'no-room' } },
          { kind: 'migrated', from: 1, to: 2 },
          { kind: 'issued-altered', quotes: ['Q-0001A', 'Q-0002B'] },
          { kind: 'sync-folder', folder },
        ],
        '/books/Workshop.loamwright',
      ),
    ).toEqual([
      "Today's backup of Workshop.loamwright could not be made: There is no room left on the disk for Workshop.loamwright.",
      'Workshop.loamwright was brought to the form of this Loamwright; a copy as it was lies with its backups.',
      'Issued quotes that no longer say what was issued: Q-0001A, Q-0002B. Somebody has changed the file.',
      'Workshop.loamwright seems to lie in a folder that is kept alike on several machines; open it on one machine at a time. Copies that do not agree lie beside it: Workshop (conflict 2).loamwright.',
    ]);
  });
});
