import { describe, expect, test } from 'vitest';
import { readDay } from '#shared-calc/read/read-day.ts';
import { failed, ok } from '#shared-calc/result.ts';
import { said } from '#shared-calc/words/say-entry-fault.ts';

const read = (text: string) => readDay(text, 'From', '2027-03-15');

describe('readDay', () => {
  test.each([
    ['2027-07-19', '2027-07-19'],
    [' 2028-02-29 ', '2028-02-29'],
    ['Today', '2027-03-15'],
  ])('reads %s', (text, day) => {
    expect(read(text)).toEqual(ok(day));
  });

  test.each([
    ['', 'From needs a day.'],
    ['next week', 'From: "next week" is not a day; write it as 2027-03-15.'],
    ['2027-02-30', 'From: there is no 2027-02-30 in the calendar.'],
    ['3/4/2027', 'From: "3/4/2027" may be 2027-04-03 or 2027-03-04.'],
    ['25.12.2027', 'From: "25.12.2027" is not a day; write it as 2027-12-25.'],
    ['4/4/2027', 'From: "4/4/2027" is not a day; write it as 2027-04-04.'],
    ['40/40/2027', 'From: "40/40/2027" is not a day; write it as 2027-03-15.'],
  ])('refuses "%s" and says why', (text, says) => {
    expect(said(read(text))).toEqual(failed(says));
  });

  test('a list from a file does not know what day it is', () => {
    expect(said(readDay('today', 'From'))).toEqual(failed('From: "today" is not a day; write it as 2026-11-25.'));
  });
});
