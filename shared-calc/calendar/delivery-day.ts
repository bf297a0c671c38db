import { addDays, weekdayOf, type Day } from './day.ts';
import { nextOpen, previousOpen, type WorkCalendar } from './work-calendar.ts';

/**
 * The first day from this one on that is open and one of the supplier's weekdays (1 Monday to 7 Sunday; none given: any
 * open day). `undefined` if the supplier never comes on an open day.
 */
export function nextDeliveryDay(day: Day, weekdays: readonly number[], calendar: WorkCalendar): Day | undefined {
  if (!canBeDelivered(weekdays, calendar)) return undefined;
  let at = nextOpen(day, calendar);
  while (!comesOn(at, weekdays)) at = nextOpen(addDays(at, 1), calendar);
  return at;
}

/** The last day up to this one on which the supplier comes and the workshop is open. */
export function previousDeliveryDay(day: Day, weekdays: readonly number[], calendar: WorkCalendar): Day | undefined {
  if (!canBeDelivered(weekdays, calendar)) return undefined;
  let at = previousOpen(day, calendar);
  while (!comesOn(at, weekdays)) at = previousOpen(addDays(at, -1), calendar);
  return at;
}

function comesOn(day: Day, weekdays: readonly number[]): boolean {
  return weekdays.length === 0 || weekdays.includes(weekdayOf(day));
}

function canBeDelivered(weekdays: readonly number[], { openWeekdays }: WorkCalendar): boolean {
  return weekdays.length === 0 || weekdays.some((weekday) => openWeekdays.includes(weekday));
}
