import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween, parseDay, weekdayOf } from '#shared-calc/calendar/day.ts';

const day = fc.integer({ min: 0, max: 40_000 }).map((days) => addDays('1990-01-01', days));

describe('parseDay', () => {
  test.each(['2027-07-19', '2028-02-29', '2000-02-29'])('%s is a day', (text) => {
    expect(parseDay(text)).toEqual({ ok: true, value: text });
  });

  test('blanks round it do no harm', () => {
    expect(parseDay(' 2027-07-19 ')).toEqual({ ok: true, value: '2027-07-19' });
  });

  test.each(['2027-02-29', '2100-02-29', '2027-04-31', '2027-13-01', '2027-00-10', '2027-01-00', '2027-01-32'])(
    'there is no %s',
    (text) => {
      expect(parseDay(text)).toEqual({ ok: false, fault: { kind: 'not-a-day', text, why: 'no such day' } });
    },
  );

  test.each(['', '19.07.2027', '2027-7-19', '20270719', '2027-07-19T10:00', '+002027-07-19', 'Monday'])(
    '"%s" is not written as a day',
    (text) => {
      expect(parseDay(text)).toEqual({ ok: false, fault: { kind: 'not-a-day', text, why: 'form' } });
    },
  );
});

describe('addDays', () => {
  test.each([
    ['2027-07-27', 30, '2027-08-26'],
    ['2027-09-17', 365, '2028-09-16'],
    ['2028-02-28', 1, '2028-02-29'],
    ['2027-01-01', -1, '2026-12-31'],
    ['2027-07-19', 0, '2027-07-19'],
  ])('%s and %d days is %s', (from, count, to) => {
    expect(addDays(from, count)).toBe(to);
  });

  test('there and back is the same day, and days between are the days gone', () => {
    fc.assert(
      fc.property(day, fc.integer({ min: -5000, max: 5000 }), (from, count) => {
        const to = addDays(from, count);
        expect([addDays(to, -count), daysBetween(from, to), from < to]).toEqual([from, count, count > 0]);
      }),
    );
  });
});

describe('daysBetween', () => {
  test.each([
    ['2027-04-28', '2027-05-06', 8],
    ['2027-05-06', '2027-04-28', -8],
    ['2027-04-28', '2027-04-28', 0],
  ])('from %s to %s are %d days', (from, to, days) => {
    expect(daysBetween(from, to)).toBe(days);
  });
});

describe('weekdayOf', () => {
  test.each([
    ['2027-07-19', 1],
    ['2027-04-28', 3],
    ['2028-09-16', 6],
    ['2027-08-01', 7],
  ])('%s is weekday %d', (date, weekday) => {
    expect(weekdayOf(date)).toBe(weekday);
  });
});
