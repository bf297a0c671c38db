import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';

/** When this book's workshop is open. */
export function calendarOf(records: Pick<Records, 'workshop' | 'closedDay'>): WorkCalendar {
  return { openWeekdays: workshopOf(records).openWeekdays, closed: [...records.closedDay.values()] };
}
