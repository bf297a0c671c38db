import { describe, expect, test } from 'vitest';
import { orderBy } from '#shared-calc/trade/dates/order-by.ts';

const weekdays = { openWeekdays: [1, 2, 3, 4, 5], closed: [] };

describe('orderBy', () => {
  // Counted by hand on the calendar.
  test.each([
    { as: 'a tank on 30 Mar with 10 days of lead', need: '2027-03-30', lead: 10, buffer: 0, by: '2027-03-16' },
    { as: 'plants on 4 Mar with 4 days of lead', need: '2027-03-04', lead: 4, buffer: 0, by: '2027-02-26' },
    {
      as: 'media on 5 Apr with 2 days of lead and one to spare',
      need: '2027-04-05',
      lead: 2,
      buffer: 1,
      by: '2027-03-31',
    },
  ])('$as are ordered by $by', ({ need, lead, buffer, by }) => {
    expect(orderBy(need, { lead, buffer }, weekdays)).toBe(by);
  });

  test.each([
    { as: 'a lead below zero', lead: -1, buffer: 0, says: 'The lead cannot be below zero.' },
    { as: 'a buffer below zero', lead: 1, buffer: -1, says: 'The buffer cannot be below zero.' },
    { as: 'half a day of lead', lead: 1.5, buffer: 0, says: 'The shift must be whole days; you gave -1.5.' },
  ])('refuses $as', ({ lead, buffer, says }) => {
    expect(orderBy('2027-03-30', { lead, buffer }, weekdays)).toEqual({ refused: says });
  });
});
