import { afterAll, beforeAll, expect, test } from 'vitest';
import { openServedBook, type ServedPages } from './served-book.ts';

/** Shared by all test files of a process, so that the browser starts once and the page's code is compiled once. */
let shared: Promise<ServedPages> | undefined;

/** The page and the program for the tests of a file, over books of their own. */
export function useServedBook(): Omit<ServedPages, 'leave' | 'close'> {
  let pages: ServedPages;
  beforeAll(async () => {
    shared ??= openServedBook();
    pages = await shared;
  });
  afterAll(async () => {
    await pages.leave();
  });
  return {
    book: () => pages.book(),
    begin: (place, prepare) => pages.begin(place, prepare),
    beside: (place) => pages.beside(place),
    open: (place, window, more) => pages.open(place, window, more),
    restart: (place) => pages.restart(place),
    complaints: () => pages.complaints(),
    get strangers() {
      return pages.strangers;
    },
  };
}

/** The last test of a file: what the pages reported during the others. */
export function noneComplained(pages: Pick<ServedPages, 'complaints' | 'strangers'>): void {
  test('no page complained or asked for anything outside', () => {
    expect([pages.complaints(), pages.strangers]).toEqual([[], []]);
  });
}
