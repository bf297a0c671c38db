import { Temporal } from 'temporal-polyfill';
import { addDays, weekdayOf, type Day } from './day.ts';

/** The weeks that a month is shown in, each of seven days; `weekStart` is 1 Monday to 7 Sunday. */
export function monthWeeks(day: Day, weekStart: number): readonly (readonly Day[])[] {
  const first = `${day.slice(0, 8)}01`;
  const from = addDays(first, -((weekdayOf(first) - weekStart + 7) % 7));
  const weeks: Day[][] = [];
  for (let start = from; start.slice(0, 7) <= day.slice(0, 7); start = addDays(start, 7)) {
    weeks.push(Array.from({ length: 7 }, (_, at) => addDays(start, at)));
  }
  return weeks;
}

/** The same date so many months later, or the last of a shorter month. */
export function addMonths(day: Day, months: number): Day {
  return Temporal.PlainDate.from(day).add({ months }).toString();
}
