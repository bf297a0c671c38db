import { describe, expect, test } from 'vitest';
import { addMonths, monthWeeks } from '#shared-calc/calendar/month-weeks.ts';

describe('monthWeeks', () => {
  test.each([
    ['2027-05-12', 1, '2027-04-26', '2027-06-06', 6],
    ['2027-05-12', 7, '2027-04-25', '2027-06-05', 6],
    ['2027-02-28', 1, '2027-02-01', '2027-02-28', 4],
    ['2027-08-31', 6, '2027-07-31', '2027-09-03', 5],
  ])('the month of %s, in weeks from weekday %d on, runs from %s to %s', (day, weekStart, ...wanted) => {
    const weeks = monthWeeks(day, weekStart);

    expect([weeks[0]?.[0], weeks.at(-1)?.at(-1), weeks.length]).toEqual(wanted);
    expect(weeks.every((week) => week.length === 7)).toBe(true);
  });
});

describe('addMonths', () => {
  test('a month that is shorter ends with its last day', () => {
    expect([addMonths('2027-01-31', 1), addMonths('2027-03-31', -12)]).toEqual(['2027-02-28', '2026-03-31']);
  });
});
