import { describe, expect, test } from 'vitest';
import {
  prepareParts,
  readCardsRest,
  readPrepareRest,
  writeCards,
  writePrepare,
} from '#renderer/frame/prepare-route.ts';
import { readRoute } from '#renderer/frame/place-route.ts';
import { busyBook } from '#tests/renderer/places/prepare/busy-book.ts';

const records = busyBook();

describe('readPrepareRest', () => {
  test.each([
    [[], { job: undefined, part: 'dates', of: undefined }],
    [['jobs'], { job: undefined, part: 'jobs', of: undefined }],
    [['J02', 'checks', 'T07#2'], { job: 'J02', part: 'checks', of: 'T07#2' }],
    [['leaves', 'TB-001'], { job: undefined, part: 'leaves', of: 'TB-001' }],
    [['J99', 'checks'], { job: undefined, part: 'dates', of: 'checks' }],
  ])('%j', (rest, read) => {
    expect(readPrepareRest(rest, records)).toEqual(read);
  });

  test('every part is found again by its own link', () => {
    for (const { id } of prepareParts) {
      const { rest } = readRoute(writePrepare('J02', id, 'T07#2'));
      expect(readPrepareRest(rest, records)).toEqual({ job: 'J02', part: id, of: 'T07#2' });
    }
  });
});

describe('readCardsRest', () => {
  test.each([
    ['#/cards', { job: undefined, card: undefined, one: undefined }],
    ['#/cards/areas', { job: undefined, card: 'areas', one: undefined }],
    [writeCards('J02', 'build'), { job: 'J02', card: 'build', one: undefined }],
    [writeCards('J02', 'labels', 'TB-001'), { job: 'J02', card: 'labels', one: 'TB-001' }],
  ])('%s', (link, read) => {
    expect(readCardsRest(readRoute(link).rest, records)).toEqual(read);
  });
});
