import { parseDay, type Day } from '#shared-calc/calendar/day.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { firstRefusal, type Refusal } from '#shared-calc/trade/first-refusal.ts';
import { sayPlain } from '#shared-calc/trade/say-plain.ts';

const MOST_DAYS = 36_500; // a hundred years

export function noDay(text: Day): Refusal | undefined {
  return firstRefusal([[!parseDay(text).ok, `${text} is no day; write it as 2027-07-19.`]]);
}

/** Refuses a count of days that is not whole, or over a hundred years in either direction. */
export function noDayCount(name: string, count: number): Refusal | undefined {
  return firstRefusal([
    [!Number.isInteger(count), `${name} must be whole days; you gave ${sayPlain(count)}.`],
    [Math.abs(count) > MOST_DAYS, `${name} of ${sayPlain(count)} days is more than a hundred years.`],
  ]);
}

export function neverOpen({ openWeekdays }: WorkCalendar): Refusal | undefined {
  const opens = openWeekdays.some((weekday) => weekday >= 1 && weekday <= 7);
  return firstRefusal([[!opens, 'The workshop is open on no weekday; mark at least one.']]);
}
