import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';

/*
 * Dates counted day by day with the platform's own calendar, independent of the tested code.
 */

const DAY = 86_400_000;

export function dayAt(from: string, count: number): string {
  return new Date(Date.parse(`${from}T00:00:00Z`) + count * DAY).toISOString().slice(0, 10);
}

export function isOpenDay(day: string, { openWeekdays, closed }: WorkCalendar): boolean {
  const weekday = new Date(`${day}T00:00:00Z`).getUTCDay() || 7;
  return openWeekdays.includes(weekday) && !closed.some(({ from, to }) => from <= day && day <= to);
}

export function firstOpenFrom(day: string, calendar: WorkCalendar): string {
  let at = day;
  while (!isOpenDay(at, calendar)) at = dayAt(at, 1);
  return at;
}

/** The day that is a number of open days after this one. */
export function openDaysAfter(day: string, count: number, calendar: WorkCalendar): string {
  let at = day;
  for (let left = count; left > 0;) {
    at = dayAt(at, 1);
    if (isOpenDay(at, calendar)) left -= 1;
  }
  return at;
}

export function nextComing(day: string, weekdays: readonly number[], calendar: WorkCalendar): string {
  let at = day;
  while (!isOpenDay(at, calendar) || !(weekdays.length === 0 || weekdays.includes(new Date(at).getUTCDay() || 7))) {
    at = dayAt(at, 1);
  }
  return at;
}

/** The last open day, up to this one, for which a test holds. */
export function lastOpenWhere(upTo: string, calendar: WorkCalendar, holds: (day: string) => boolean): string {
  let at = upTo;
  while (!isOpenDay(at, calendar) || !holds(at)) at = dayAt(at, -1);
  return at;
}
