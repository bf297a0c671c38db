import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { isInSeason, nextInSeason, previousInSeason } from '#shared-calc/calendar/season.ts';

const winter = { from: '10-01', to: '03-31' };
const summer = { from: '05-15', to: '08-31' };
const leap = { from: '02-29', to: '02-29' };

describe('season', () => {
  test.each([
    [winter, '2027-07-01', '2027-10-01', '2027-03-31'],
    [winter, '2027-10-01', '2027-10-01', '2027-10-01'],
    [winter, '2027-12-31', '2027-12-31', '2027-12-31'],
    [winter, '2028-03-31', '2028-03-31', '2028-03-31'],
    [summer, '2027-09-01', '2028-05-15', '2027-08-31'],
    [summer, '2027-05-14', '2027-05-15', '2026-08-31'],
  ])('%o on %s: next %s, last %s', (season, day, next, last) => {
    expect([nextInSeason(day, season), previousInSeason(day, season)]).toEqual([next, last]);
  });

  test('the next and the last day of a season are the first met going forward and back, day by day', () => {
    const yearDay = fc.integer({ min: 0, max: 364 }).map((at) => addDays('2027-01-01', at).slice(5));
    fc.assert(
      fc.property(yearDay, yearDay, fc.integer({ min: 0, max: 1460 }), (from, to, at) => {
        const season = { from, to };
        const day = addDays('2026-01-01', at);
        const met = (step: number) => {
          let each = day;
          while (!isInSeason(each, season)) each = addDays(each, step);
          return each;
        };
        expect([nextInSeason(day, season), previousInSeason(day, season)]).toEqual([met(1), met(-1)]);
      }),
    );
  });

  test('a season that begins on a 29 February has begun on the 28th of a year without one', () => {
    expect(nextInSeason('2027-01-01', leap)).toBe('2027-02-28');
  });
});
