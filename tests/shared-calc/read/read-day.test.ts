import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { writeDay, type DateOrder } from '#shared-calc/calendar/write-day.ts';
import { readDay } from '#shared-calc/read/read-day.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

const today = '2027-03-15';
const read = (text: string, dateOrder: DateOrder = 'ymd', nearest = false) =>
  readDay(text, 'From', { today, display: { dateOrder }, nearest });

describe('readDay', () => {
  test.each([
    ['2027-07-19', '2027-07-19'],
    [' 2028-02-29 ', '2028-02-29'],
    ['2027/7/9', '2027-07-09'],
    ['Today', '2027-03-15'],
    ['tomorrow', '2027-03-16'],
    ['12 May 2027', '2027-05-12'],
    ['12 may', '2027-05-12'],
    ['May 12', '2027-05-12'],
    ['May 12, 2028', '2028-05-12'],
    ['12th of May', undefined],
    ['Wed 12 May', '2027-05-12'],
    ['Wednesday, 12 May 2027', '2027-05-12'],
    ['12 Sept 2027', '2027-09-12'],
    ['4 February', '2028-02-04'],
    ['29 Feb', '2028-02-29'],
    ['25.12.2027', '2027-12-25'],
    ['25/12/27', '2027-12-25'],
    ['4/4/2027', '2027-04-04'],
  ])('reads %s in a workshop that writes the year first', (text, day) => {
    const reading = read(text);
    expect(reading.ok ? reading.value : undefined).toBe(day);
  });

  test.each([
    ['5/12/2027', '2027-12-05', '2027-05-12'],
    ['12-05-2027', '2027-05-12', '2027-12-05'],
    ['5/12', '2027-12-05', '2027-05-12'],
    ['25/12/2027', '2027-12-25', undefined],
    ['12/25/2027', undefined, '2027-12-25'],
    ['12.5.2027', '2027-05-12', undefined],
    ['12.5.', '2027-05-12', undefined],
    ['30.5.2027', '2027-05-30', '2027-05-30'],
  ])('reads %s by the order of the workshop', (text, byDay, byMonth) => {
    const [one, other] = [read(text, 'dmy'), read(text, 'mdy')];
    expect([one.ok ? one.value : undefined, other.ok ? other.value : undefined]).toEqual([byDay, byMonth]);
  });

  test('without its year a day of a plan is the next, a day of something done the nearest', () => {
    expect([read('1 March'), read('1 March', 'ymd', true), read('1 Oct', 'ymd', true)]).toEqual([
      ok('2028-03-01'),
      ok('2027-03-01'),
      ok('2026-10-01'),
    ]);
  });

  test.each([
    ['', 'From needs a day.'],
    ['next week', 'From: "next week" is not a day; write it as 2027-03-15.'],
    ['2027-02-30', 'From: there is no 2027-02-30 in the calendar.'],
    ['30 February', 'From: there is no 30 February in the calendar.'],
    ['Mon 12 May 2027', 'From: there is no Mon 12 May 2027 in the calendar.'],
    ['3/4/2027', 'From: "3/4/2027" may be 2027-04-03 or 2027-03-04.'],
    ['3/4', 'From: "3/4" is not a day; write it as 2027-03-15.'],
    ['40/40/2027', 'From: "40/40/2027" is not a day; write it as 2027-03-15.'],
  ])('refuses "%s" and says why', (text, says) => {
    expect(said(read(text))).toEqual(failed(says));
  });

  test('points between figures are asked for where the month comes first', () => {
    expect(said(read('3.4.2027', 'mdy'))).toEqual(failed('From: "3.4.2027" may be Apr 3, 2027 or Mar 4, 2027.'));
  });

  test('a list from a file does not know what day it is', () => {
    expect(said(readDay('today', 'From'))).toEqual(failed('From: "today" is not a day; write it as 2026-11-25.'));
    expect(readDay('12 May', 'From').ok).toBe(false);
  });

  test('every day is read as it was written, in every order', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20_000, max: 20_000 }), fc.constantFrom('ymd', 'dmy', 'mdy'), (days, order) => {
        const day = addDays(today, days);
        expect(read(writeDay(day, order), order)).toEqual(ok(day));
      }),
    );
  });
});
