import { describe, expect, test } from 'vitest';
import { readFullDemo } from '#electron/book/read-full-demo.ts';
import { valueOf } from '#tests/electron/book/book-at-hand.ts';

describe('readFullDemo', () => {
  test.each([
    ['a Saturday', '2027-06-19'],
    ['the summer closing', '2027-08-04'],
    ['the Sunday a week after it', '2027-08-15'],
    ['a leap day', '2028-02-29'],
  ])('on %s no act of its story is refused', (_name, day) => {
    expect(valueOf(readFullDemo(day)).refused).toEqual([]);
  });
});
