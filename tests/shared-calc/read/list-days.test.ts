import { describe, expect, test } from 'vitest';
import { orderOf, readListDay, type DateOrder } from '#shared-calc/read/list-days.ts';
import { sayEntryFault } from '#shared-calc/words/say-entry-fault.ts';

function said(text: string, order?: DateOrder): string {
  const read = readListDay(text, 'From', order);
  return read.ok ? read.value : sayEntryFault(read.fault);
}

describe('readListDay', () => {
  test.each([
    ['2027-05-12', undefined, '2027-05-12'],
    ['2027/5/12', 'dmy', '2027-05-12'],
    ['20270512', undefined, '2027-05-12'],
    ['2027-05-12T00:00:00', 'mdy', '2027-05-12'],
    ['12/05/2027 00:00', 'dmy', '2027-05-12'],
    ['12/05/2027', 'mdy', '2027-12-05'],
    ['12.5.27', 'dmy', '2027-05-12'],
    ['27-05-12', 'ymd', '2027-05-12'],
    ['25/12/2027', undefined, '2027-12-25'],
    ['12 May 2027', undefined, '2027-05-12'],
    ['12-Sept-27', 'mdy', '2027-09-12'],
    ['May 3rd, 2027', undefined, '2027-05-03'],
    ['05/05/2027', undefined, '2027-05-05'],
    ['12/05/2027', undefined, 'From: "12/05/2027" may be 2027-05-12 or 2027-12-05.'],
    ['25/12/2027', 'mdy', 'From: there is no 25/12/2027 in the calendar.'],
    ['2027-02-30', undefined, 'From: there is no 2027-02-30 in the calendar.'],
    ['31 April 2027', undefined, 'From: there is no 31 April 2027 in the calendar.'],
    ['spring', undefined, 'From: "spring" is not a day; write it as 2026-11-25.'],
    ['12/5-2027', 'dmy', 'From: "12/5-2027" is not a day; write it as 2026-11-25.'],
    [' ', 'dmy', 'From needs a day.'],
  ] as const)('%j in the order %s is %s', (text, order, day) => {
    expect(said(text, order)).toBe(day);
  });
});

describe('orderOf', () => {
  test.each([
    [['1/12/2027', '13/1/2027', 'soon'], 'dmy'],
    [['1/12/2027', '1/31/2027'], 'mdy'],
    [['1/12/2027', '3/4/2027'], undefined],
    [['13/1/2027', '1/31/2027'], undefined],
    [['2027-01-12', '12 May 2027'], undefined],
    [[], undefined],
  ])('days %j are in the order %s', (texts, order) => {
    expect(orderOf(texts)).toBe(order);
  });
});
