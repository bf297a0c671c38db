import { Temporal } from 'temporal-polyfill';
import { failed, ok, type Result } from '#shared-calc/result.ts';

/** A plain day as `YYYY-MM-DD`: no hour, no zone. Days sort as text. */
export type Day = string;

export type DayFault = { readonly kind: 'not-a-day'; readonly text: string; readonly why: 'form' | 'no such day' };

const form = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Reads a day such as `2027-07-19`; 31 February and other forms are refused. */
export function parseDay(text: string): Result<Day, DayFault> {
  const parts = form.exec(text.trim());
  if (!parts) return failed({ kind: 'not-a-day', text, why: 'form' });
  const [year, month, day] = parts.slice(1).map(Number);
  return isInCalendar(year ?? 0, month ?? 0, day ?? 0)
    ? ok(parts[0])
    : failed({ kind: 'not-a-day', text, why: 'no such day' });
}

/** Why a text is not a day; `undefined` if it is one. */
export function dayFault(text: string): DayFault | undefined {
  const day = parseDay(text);
  return day.ok ? undefined : day.fault;
}

/** The day this many calendar days later, or earlier if the count is negative. Whole counts only. */
export function addDays(day: Day, count: number): Day {
  return Temporal.PlainDate.from(day).add({ days: count }).toString();
}

/** Whole days from the first to the second; negative where the second is earlier. */
export function daysBetween(from: Day, to: Day): number {
  return Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to), { largestUnit: 'day' }).days;
}

/** 1 Monday to 7 Sunday. */
export function weekdayOf(day: Day): number {
  return Temporal.PlainDate.from(day).dayOfWeek;
}

/** Compares two things by their day, the earlier first. */
export function byDay<T>(dayOf: (one: T) => Day): (one: T, other: T) => number {
  return (one, other) => {
    const [day, next] = [dayOf(one), dayOf(other)];
    return day < next ? -1 : Number(day > next);
  };
}

function isInCalendar(year: number, month: number, day: number): boolean {
  if (month < 1 || month > 12 || day < 1) return false;
  return day <= Temporal.PlainDate.from({ year, month, day: 1 }).daysInMonth;
}
