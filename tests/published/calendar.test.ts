import { addDays as addDaysTheirs, format, isSaturday, isSunday, isWithinInterval, parseISO } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '#shared-calc/calendar/day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { careDates } from '#shared-calc/prepare/care-calendar.ts';

/*
 * The npm package `date-fns` (MIT) as an independent calendar: plain dates, weekends and closed days by its own
 * functions, over 2,000 random plans.
 */
const RUNS = 2_000;
const say = (day: Date) => format(day, 'yyyy-MM-dd');

const dayText = fc.date({ min: new Date(2024, 0, 1), max: new Date(2032, 11, 31), noInvalidDate: true }).map(say);
const closedRange = fc.tuple(dayText, fc.integer({ min: 0, max: 9 })).map(([from, length]) => ({
  from,
  to: say(addDaysTheirs(parseISO(from), length)),
}));
const calendars: fc.Arbitrary<WorkCalendar> = fc
  .array(closedRange, { maxLength: 4 })
  .map((closed) => ({ openWeekdays: [1, 2, 3, 4, 5], closed }));

function isOpenTheirs(day: Date, { closed }: WorkCalendar): boolean {
  if (isSaturday(day) || isSunday(day)) return false;
  return !closed.some(({ from, to }) => isWithinInterval(day, { start: parseISO(from), end: parseISO(to) }));
}

function shiftTheirs(text: string, count: number, calendar: WorkCalendar): string {
  let day = parseISO(text);
  for (let left = Math.abs(count); left > 0;) {
    day = addDaysTheirs(day, Math.sign(count));
    if (isOpenTheirs(day, calendar)) left -= 1;
  }
  return say(day);
}

describe('the calendar against an independent library', () => {
  test('working days forward and backward over weekends and closed days are the same', () => {
    fc.assert(
      fc.property(dayText, fc.integer({ min: -30, max: 30 }), calendars, (day, count, calendar) => {
        expect(shiftWorkdays(day, count, calendar)).toBe(shiftTheirs(day, count, calendar));
      }),
      { numRuns: RUNS },
    );
  });

  test('days added and days between agree, leap years and all', () => {
    fc.assert(
      fc.property(dayText, fc.integer({ min: -800, max: 800 }), (day, count) => {
        const later = say(addDaysTheirs(parseISO(day), count));
        expect([addDays(day, count), daysBetween(day, later)]).toEqual([later, count]);
      }),
      { numRuns: RUNS },
    );
  });

  test('visits 7, 28, 91, 182, 273 and 365 days after the handover fall on the same open days', () => {
    fc.assert(
      fc.property(dayText, calendars, (handover, calendar) => {
        const theirs = [7, 28, 91, 182, 273, 365].map((offset) => {
          let day = addDaysTheirs(parseISO(handover), offset);
          while (!isOpenTheirs(day, calendar)) day = addDaysTheirs(day, 1);
          return say(day);
        });
        expect(careDates(handover, calendar).map(({ date }) => date)).toEqual(theirs);
      }),
      { numRuns: RUNS },
    );
  });
});
