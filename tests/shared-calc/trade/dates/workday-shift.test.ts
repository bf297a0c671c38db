import { describe, expect, test } from 'vitest';
import { workdayShift } from '#shared-calc/trade/dates/workday-shift.ts';

const summer = {
  openWeekdays: [1, 2, 3, 4, 5],
  closed: [
    { from: '2027-08-02', to: '2027-08-06' },
    { from: '2027-08-30', to: '2027-08-30' },
  ],
};

describe('workdayShift', () => {
  // Counted by hand on the calendar.
  test.each([
    ['2027-07-29', 5, '2027-08-12'],
    ['2027-09-01', -3, '2027-08-26'],
    ['2027-08-07', 0, '2027-08-07'],
  ])('%s and %d working days is %s', (date, count, moved) => {
    expect(workdayShift(date, count, summer)).toBe(moved);
  });

  test.each([
    { as: 'a day that is none', date: '2027-02-31', count: 1, says: '2027-02-31 is no day; write it as 2027-07-19.' },
    { as: 'half a day', date: '2027-07-29', count: 1.5, says: 'The shift must be whole days; you gave 1.5.' },
    {
      as: 'a shift past a hundred years',
      date: '2027-07-29',
      count: 40_000,
      says: 'The shift of 40000 days is more than a hundred years.',
    },
  ])('refuses $as', ({ date, count, says }) => {
    expect(workdayShift(date, count, summer)).toEqual({ refused: says });
  });

  test('refuses a workshop that never opens', () => {
    expect(workdayShift('2027-07-29', 1, { openWeekdays: [], closed: [] })).toEqual({
      refused: 'The workshop is open on no weekday; mark at least one.',
    });
  });
});
