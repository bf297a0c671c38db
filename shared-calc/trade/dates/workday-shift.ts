import type { Day } from '#shared-calc/calendar/day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { neverOpen, noDay, noDayCount } from './refuse-date.ts';
import { listFunction } from '#shared-calc/trade/trade-function.ts';

/** A day moved by this many working days, back if the count is negative; 0 returns the day. */
export function workdayShift(date: Day, count: number, calendar: WorkCalendar): Day | Refusal {
  return noDay(date) ?? noDayCount('The shift', count) ?? neverOpen(calendar) ?? shiftWorkdays(date, count, calendar);
}

export const workdayShiftEntry = listFunction({
  name: 'WORKDAY_SHIFT',
  title: 'Working days on',
  group: 'dates',
  takes: 'day, count of working days, open weekdays, closed days',
  gives: 'day',
  sum: 'counts open days only; the day itself is not counted',
  help: 'A day so many working days later, or earlier with a minus.',
  examples: [
    { rule: '29 Jul 2027 + 5, closed 2-6 Aug and 30 Aug', gives: '12 Aug 2027' },
    { rule: '1 Sep 2027 - 3, closed 2-6 Aug and 30 Aug', gives: '26 Aug 2027' },
  ],
  source: 'calendar',
});
