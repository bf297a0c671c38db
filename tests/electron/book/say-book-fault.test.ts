import { describe, expect, test } from 'vitest';
import { sayBookFault, sayEditFault } from '#electron/book/say-book-fault.ts';

describe('sayBookFault', () => {
  test.each([
    [{ kind: 'missing' }, 'There is no book at Shop.loamwright.'],
    [{ kind: 'not-a-book', what: 'other' }, 'Shop.loamwright is not a book.'],
    [{ kind: 'not-a-book', what: 'empty' }, 'Shop.loamwright is not a book but an empty file.'],
    [{ kind: 'not-a-book', what: 'folder' }, 'Shop.loamwright is not a book but a folder.'],
    [
      { kind: 'newer', found: 7, newest: 1 },
      'Shop.loamwright was written by a newer Loamwright (form 7, this one knows up to 1).',
    ],
    [{ kind: 'locked' }, 'Another program is writing in Shop.loamwright; try again when it is done.'],
    [
      { kind: 'read-only', what: 'folder' },
      'The folder of Shop.loamwright may only be read, so Shop.loamwright cannot be written.',
    ],
    [
      { kind: 'damaged', damage: { what: 'records', records: [{ kind: 'tank', id: 'T07', issues: [] }] } },
      'Shop.loamwright is damaged: these do not say what they should: tank T07. It was left as it is; a backup can take its place: book recover.',
    ],
  ] as const)('%j', (fault, sentence) => {
    expect(sayBookFault(fault, 'Shop.loamwright')).toBe(sentence);
  });
});

describe('sayEditFault', () => {
  test.each([
    [{ kind: 'no-room' }, 'There is no room left on the disk for the book.'],
    [{ kind: 'read-only', what: 'file' }, 'The book may only be read.'],
    [
      { kind: 'changed-elsewhere', records: 'abcdefg'.split('').map((id) => ({ kind: 'localValue', id }) as const) },
      'Changed in another window meanwhile: local value a, local value b, local value c, local value d, local value e and 2 more.',
    ],
    [
      { kind: 'still-used', record: { kind: 'tank', id: 'T07' }, by: [{ kind: 'size', id: 'J01-T07' }] },
      'Tank T07 is still used by size J01-T07.',
    ],
    [
      {
        kind: 'not-valid',
        record: { kind: 'workshop', id: 'workshop' },
        issues: [{ field: 'altitudeM', code: 'invalid_type', says: 'expected number' }],
      },
      'The workshop cannot be kept like this: altitudeM: expected number.',
    ],
    [{ kind: 'lasting', label: 'issue Q-0001A' }, 'This is not undone: issue Q-0001A.'],
  ] as const)('%j', (fault, sentence) => {
    expect(sayEditFault(fault)).toBe(sentence);
  });
});
