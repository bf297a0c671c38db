import { addDays, weekdayOf, type Day } from './day.ts';

/** Both ends are closed. */
export interface ClosedRange {
  readonly from: Day;
  readonly to: Day;
}

/** When the workshop is open. `openWeekdays` runs from 1 Monday to 7 Sunday and names at least one. */
export interface WorkCalendar {
  readonly openWeekdays: readonly number[];
  readonly closed: readonly ClosedRange[];
}

export function isOpen(day: Day, calendar: WorkCalendar): boolean {
  return calendar.openWeekdays.includes(weekdayOf(day)) && !closedOver(day, calendar);
}

/** The day itself if it is open, otherwise the first open day after it. */
export function nextOpen(day: Day, calendar: WorkCalendar): Day {
  needsOpenWeekday(calendar);
  let at = day;
  while (!isOpen(at, calendar)) at = addDays(closedOver(at, calendar)?.to ?? at, 1);
  return at;
}

/** The day itself if it is open, otherwise the last open day before it. */
export function previousOpen(day: Day, calendar: WorkCalendar): Day {
  needsOpenWeekday(calendar);
  let at = day;
  while (!isOpen(at, calendar)) at = addDays(closedOver(at, calendar)?.from ?? at, -1);
  return at;
}

function closedOver(day: Day, calendar: WorkCalendar): ClosedRange | undefined {
  return calendar.closed.find((range) => range.from <= day && day <= range.to);
}

/** Without an open weekday the search never ends. The record's schema requires one, so this is a bug. */
function needsOpenWeekday({ openWeekdays }: WorkCalendar): void {
  if (!openWeekdays.some((weekday) => weekday >= 1 && weekday <= 7)) throw new Error('a calendar with no open weekday');
}
