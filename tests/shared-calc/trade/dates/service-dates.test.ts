import { describe, expect, test } from 'vitest';
import { serviceDates } from '#shared-calc/trade/dates/service-dates.ts';

const weekdays = { openWeekdays: [1, 2, 3, 4, 5], closed: [] };
const usual = [7, 28, 91, 182, 273, 365];

describe('serviceDates', () => {
  // Counted by hand on the calendar.
  test.each([
    {
      handover: '2027-09-17',
      dates: ['2027-09-24', '2027-10-15', '2027-12-17', '2028-03-17', '2028-06-16', '2028-09-18'],
    },
    {
      handover: '2027-04-28',
      dates: ['2027-05-05', '2027-05-26', '2027-07-28', '2027-10-27', '2028-01-26', '2028-04-27'],
    },
  ])('after a handover on $handover', ({ handover, dates }) => {
    expect(serviceDates(handover, usual, weekdays)).toEqual(dates);
  });

  test('a visit in the holidays moves behind them', () => {
    const holidays = { ...weekdays, closed: [{ from: '2027-08-02', to: '2027-08-06' }] };
    expect(serviceDates('2027-07-28', [7], holidays)).toEqual(['2027-08-09']);
  });

  test.each([
    {
      as: 'a handover that is no day',
      handover: '2027-13-01',
      offsets: usual,
      says: '2027-13-01 is no day; write it as 2027-07-19.',
    },
    { as: 'half a day', handover: '2027-09-17', offsets: [0.5], says: 'A service must be whole days; you gave 0.5.' },
  ])('refuses $as', ({ handover, offsets, says }) => {
    expect(serviceDates(handover, offsets, weekdays)).toEqual({ refused: says });
  });
});
