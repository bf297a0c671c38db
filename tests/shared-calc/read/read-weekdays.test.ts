import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWeekdays, writeWeekdays } from '#shared-calc/read/read-weekdays.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

describe('readWeekdays', () => {
  test.each([
    ['Mon-Fri', [1, 2, 3, 4, 5]],
    ['Tue, Wed, Thu', [2, 3, 4]],
    ['tuesday;sat', [2, 6]],
    ['Fri-Mon', [1, 5, 6, 7]],
    ['', []],
  ])('reads %s', (text, days) => {
    expect(readWeekdays(text, 'Comes on')).toEqual(ok(days));
  });

  test.each(['Mo-nday', 'Someday', 'T', 'Mon-Tue-Wed'])('refuses %s', (text) => {
    expect(said(readWeekdays(text, 'Comes on'))).toEqual(
      failed(`Comes on: "${text}" is no day of the week; write Mon Tue Wed Thu Fri Sat Sun, or Mon-Fri.`),
    );
  });
});

describe('writeWeekdays', () => {
  test('three or more days in a row are one run', () => {
    expect([writeWeekdays([2, 3, 4]), writeWeekdays([1, 2, 5]), writeWeekdays([])]).toEqual([
      'Tue-Thu',
      'Mon Tue Fri',
      '',
    ]);
  });

  test('what is written is read as the same days', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 1, max: 7 })), (days) => {
        expect(readWeekdays(writeWeekdays(days), '')).toEqual(ok(days.toSorted((a, b) => a - b)));
      }),
    );
  });
});
