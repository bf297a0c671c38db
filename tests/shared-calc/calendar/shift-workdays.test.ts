import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import { nextOpen } from '#shared-calc/calendar/work-calendar.ts';

const summer = {
  openWeekdays: [1, 2, 3, 4, 5],
  closed: [
    { from: '2027-08-02', to: '2027-08-06' },
    { from: '2027-08-30', to: '2027-08-30' },
  ],
};
const day = fc.integer({ min: 0, max: 1000 }).map((days) => addDays('2027-01-01', days));

describe('shiftWorkdays', () => {
  test.each([
    ['2027-07-29', 5, '2027-08-12'],
    ['2027-09-01', -3, '2027-08-26'],
    ['2027-07-19', 10, '2027-08-09'],
    ['2027-07-31', 1, '2027-08-09'],
    ['2027-08-08', -1, '2027-07-30'],
    ['2027-08-08', 0, '2027-08-08'],
  ])('%s and %d working days is %s', (from, count, to) => {
    expect(shiftWorkdays(from, count, summer)).toBe(to);
  });

  test('from an open day, there and back is the same day', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: -60, max: 60 }), (from, count) => {
        const open = nextOpen(from, summer);
        expect(shiftWorkdays(shiftWorkdays(open, count, summer), -count, summer)).toBe(open);
      }),
    );
  });
});
