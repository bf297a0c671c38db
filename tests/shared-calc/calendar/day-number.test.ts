import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, test } from 'vitest';
import { weekdayOf } from '#shared-calc/calendar/day.ts';
import { dayNumberOf, dayOfNumber } from '#shared-calc/calendar/day-number.ts';

describe('dayNumberOf', () => {
  test.each([
    ['1970-01-01', 0],
    ['1969-12-31', -1],
    ['2000-02-29', 11_016],
    ['2000-03-01', 11_017],
    ['2100-03-01', 47_541],
    ['0000-03-01', -719_468],
    ['+010000-01-01', 2_932_897],
    ['-000001-12-31', -719_529],
  ])('%s is %d', (day, number) => {
    expect([dayNumberOf(day), dayOfNumber(number)]).toEqual([number, day]);
  });
});

describe('dayOfNumber', () => {
  test("any day of 7,000 years, its number and its weekday are those of the standard's plain dates", () => {
    const epoch = Temporal.PlainDate.from('1970-01-01');
    fc.assert(
      fc.property(fc.integer({ min: -800_000, max: 3_000_000 }), (number) => {
        const theirs = epoch.add({ days: number });
        const day = dayOfNumber(number);
        expect([day, dayNumberOf(day), weekdayOf(day)]).toEqual([theirs.toString(), number, theirs.dayOfWeek]);
      }),
      { numRuns: 500 },
    );
  });

  test('ten years day by day: no day is left out, none comes twice', () => {
    for (let number = dayNumberOf('2024-01-01'); number < dayNumberOf('2034-01-01'); number += 1) {
      const [year = 0, month = 0, date = 0] = dayOfNumber(number).split('-').map(Number);
      expect(Date.UTC(year, month - 1, date) / 86_400_000).toBe(number);
    }
  });
});
