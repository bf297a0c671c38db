import { describe, expect, test } from 'vitest';
import { prepareParts, readPrepareRest, writePrepare } from '#renderer/frame/prepare-route.ts';
import { readRoute } from '#renderer/frame/place-route.ts';
import { busyBook } from '#tests/renderer/places/prepare/busy-book.ts';

const records = busyBook();

describe('readPrepareRest', () => {
  test.each([
    [[], { job: undefined, part: 'dates', of: undefined, one: undefined }],
    [['jobs'], { job: undefined, part: 'jobs', of: undefined, one: undefined }],
    [['J02', 'checks', 'T07#2'], { job: 'J02', part: 'checks', of: 'T07#2', one: undefined }],
    [['leaves', 'TB-001'], { job: undefined, part: 'leaves', of: 'TB-001', one: undefined }],
    [['J02', 'cards', 'labels', 'TB-001'], { job: 'J02', part: 'cards', of: 'labels', one: 'TB-001' }],
    [['J99', 'checks'], { job: undefined, part: 'dates', of: 'checks', one: undefined }],
  ])('%j', (rest, read) => {
    expect(readPrepareRest(rest, records)).toEqual(read);
  });

  test('every part is found again by its own link', () => {
    for (const { id } of prepareParts) {
      const { rest } = readRoute(writePrepare('J02', id, 'T07#2'));
      expect(readPrepareRest(rest, records)).toEqual({ job: 'J02', part: id, of: 'T07#2', one: undefined });
    }
  });
});
