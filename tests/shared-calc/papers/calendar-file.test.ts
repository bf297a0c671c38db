import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { calendarFile, type CalendarEntry } from '#shared-calc/papers/calendar-file.ts';

const stamp = '2027-03-08T14:02:00.000Z';

function fileOf(...entries: readonly CalendarEntry[]): string {
  return calendarFile({ name: 'Withy Street', stamp, entries });
}

/** Every event as plain data, parsed by another library. */
function readBack(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as never);
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      date: event.startDate.toString(),
      end: event.endDate.toString(),
      wholeDay: event.startDate.isDate,
      title: event.summary,
      note: (event.description as string | null) ?? undefined,
      stamp: String(component.getFirstPropertyValue('dtstamp')),
    };
  });
}

const plants: CalendarEntry = {
  uid: 'j02-plants-order@withy',
  date: '2027-02-26',
  title: 'Order plants: Reading room',
};

describe('calendarFile', () => {
  test('a whole day is read back by another program as the day it was, its end the day after', () => {
    expect(readBack(fileOf({ ...plants, note: 'J02' }))).toEqual([
      {
        uid: 'j02-plants-order@withy',
        date: '2027-02-26',
        end: '2027-02-27',
        wholeDay: true,
        title: 'Order plants: Reading room',
        note: 'J02',
        stamp: '2027-03-08T14:02:00Z',
      },
    ]);
  });

  test('it is written as RFC 5545 has it, line by line', () => {
    expect(fileOf(plants).split('\r\n')).toEqual([
      'BEGIN:VCALENDAR',
      'VERSION:2.0',
      'PRODID:-//Loamwright//Prep plan//EN',
      'CALSCALE:GREGORIAN',
      'METHOD:PUBLISH',
      'X-WR-CALNAME:Withy Street',
      'BEGIN:VEVENT',
      'UID:j02-plants-order@withy',
      'DTSTAMP:20270308T140200Z',
      'DTSTART;VALUE=DATE:20270226',
      'DTEND;VALUE=DATE:20270227',
      'SUMMARY:Order plants: Reading room',
      'TRANSP:TRANSPARENT',
      'END:VEVENT',
      'END:VCALENDAR',
      '',
    ]);
  });

  test('draining every 6 weeks comes 8 times in a year, 42 days apart', () => {
    const text = fileOf({ ...plants, date: '2027-06-09', again: { everyDays: 42, times: 8 } });
    const [component] = new ICAL.Component(ICAL.parse(text) as never).getAllSubcomponents('vevent');
    const comes = new ICAL.Event(component as ICAL.Component).iterator();
    const days: string[] = [];
    for (let day = comes.next() as ICAL.Time | undefined; day; day = comes.next()) days.push(day.toString());
    expect(days).toEqual([0, 1, 2, 3, 4, 5, 6, 7].map((nth) => addDays('2027-06-09', nth * 42)));
  });

  test('commas, semicolons, backslashes and line ends in a title stay words', () => {
    const title = 'Oak, beech; a\\b\r\nEND:VCALENDAR\nétage 木';
    expect(readBack(fileOf({ ...plants, title })).map((event) => event.title)).toEqual([
      'Oak, beech; a\\b\nEND:VCALENDAR\nétage 木',
    ]);
  });

  test('whatever is written, no line is over 75 octets, and it is read back as it was', () => {
    const words = fc.string({ unit: 'binary', maxLength: 300 }).map((text) => text.replaceAll(/\p{Cc}/gu, ' ').trim());
    fc.assert(
      fc.property(words, words, (title, note) => {
        const text = fileOf({ ...plants, title, note });
        for (const line of text.split('\r\n')) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
        const [event] = readBack(text);
        expect([event?.title, event?.note ?? '']).toEqual([title.toWellFormed(), note.toWellFormed()]);
      }),
      { numRuns: 300 },
    );
  });
});
