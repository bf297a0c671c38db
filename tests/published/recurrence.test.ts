import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { calendarFile } from '#shared-calc/papers/calendar-file.ts';

/*
 * RFC 5545 section 3.8.5.3 prints what its rules come to, all from 2 September 1997. Our calendar files write
 * FREQ=DAILY;INTERVAL=n;COUNT=m and no other rule; the reader (npm `ical.js`) is held to the printed days, and our
 * files to the reader.
 */

/** Days of a month in 1997: `days('09', 2, 12)`. */
function days(month: string, ...dates: readonly number[]): readonly string[] {
  return dates.map((date) => `1997-${month}-${String(date).padStart(2, '0')}`);
}

function everySecond(from: number, to: number): readonly number[] {
  return Array.from({ length: (to - from) / 2 + 1 }, (_, at) => from + 2 * at);
}

function expanded(start: ICAL.Time, rule: string, most: number): readonly string[] {
  const comes = ICAL.Recur.fromString(rule).iterator(start);
  const found: string[] = [];
  for (let day = comes.next() as ICAL.Time | null; day && found.length < most; day = comes.next()) {
    found.push(day.toString().slice(0, 10));
  }
  return found;
}

const printed = [
  { says: 'daily for 10 occurrences', rule: 'FREQ=DAILY;COUNT=10', on: days('09', 2, 3, 4, 5, 6, 7, 8, 9, 10, 11) },
  {
    says: 'every 10 days, 5 occurrences',
    rule: 'FREQ=DAILY;INTERVAL=10;COUNT=5',
    on: [...days('09', 2, 12, 22), ...days('10', 2, 12)],
  },
  {
    says: 'every other day, forever: September 2, 4, 6 to 30; October 2, 4, 6 to 30',
    rule: 'FREQ=DAILY;INTERVAL=2',
    on: [...days('09', ...everySecond(2, 30)), ...days('10', ...everySecond(2, 30))],
  },
  {
    says: 'every other week on Tuesday and Thursday, 8 occurrences',
    rule: 'FREQ=WEEKLY;INTERVAL=2;COUNT=8;WKST=SU;BYDAY=TU,TH',
    on: [...days('09', 2, 4, 16, 18, 30), ...days('10', 2, 14, 16)],
  },
] as const;

describe('the reader, RFC 5545 3.8.5.3', () => {
  test.each(printed)('$says', ({ rule, on }) => {
    const morning = ICAL.Time.fromString('1997-09-02T09:00:00', undefined as never);
    expect(expanded(morning, rule, on.length)).toEqual(on);
  });

  test('a count ends it: nothing comes after the tenth day', () => {
    expect(expanded(ICAL.Time.fromDateString('1997-09-02'), 'FREQ=DAILY;COUNT=10', 99).length).toBe(10);
  });
});

describe('our calendar files, RFC 5545 3.8.5.3', () => {
  test.each([
    { says: 'daily for 10 occurrences', again: { everyDays: 1, times: 10 }, on: printed[0].on },
    { says: 'every 10 days, 5 occurrences', again: { everyDays: 10, times: 5 }, on: printed[1].on },
    { says: 'every other day, its first 30', again: { everyDays: 2, times: 30 }, on: printed[2].on },
  ])('$says', ({ again, on }) => {
    expect(readBack('1997-09-02', again)).toEqual(on);
  });

  test('whatever a round is, it comes so many days apart and so many times, over leap days and new years', () => {
    for (const everyDays of [1, 7, 10, 14, 21, 42, 91, 364]) {
      const times = Math.max(1, Math.floor(365 / everyDays));
      expect(readBack('2027-12-20', { everyDays, times })).toEqual(
        Array.from({ length: times }, (_, nth) => addDays('2027-12-20', nth * everyDays)),
      );
    }
  });
});

function readBack(date: string, again: { readonly everyDays: number; readonly times: number }): readonly string[] {
  const entry = { uid: 'drain@example', date, title: 'Drain', again };
  const text = calendarFile({ name: 'Care', stamp: '1997-06-10T17:23:45Z', entries: [entry] });
  const [component] = new ICAL.Component(ICAL.parse(text) as never).getAllSubcomponents('vevent');
  const comes = new ICAL.Event(component as ICAL.Component).iterator();
  const found: string[] = [];
  for (let day = comes.next() as ICAL.Time | undefined; day; day = comes.next()) found.push(day.toString());
  return found;
}
