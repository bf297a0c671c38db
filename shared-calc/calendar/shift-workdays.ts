import { addDays, type Day } from './day.ts';
import { nextOpen, previousOpen, type WorkCalendar } from './work-calendar.ts';

/**
 * Moves a day by this many working days, back if the count is negative; the day itself is not counted. 0 returns the
 * day, open or not. Whole counts only.
 */
export function shiftWorkdays(day: Day, count: number, calendar: WorkCalendar): Day {
  let at = day;
  for (let left = Math.abs(count); left > 0; left -= 1) {
    at = count > 0 ? nextOpen(addDays(at, 1), calendar) : previousOpen(addDays(at, -1), calendar);
  }
  return at;
}
