import { weekdayOf, type Day } from '#shared-calc/calendar/day.ts';
import { monthNames, type DateOrder } from '#shared-calc/calendar/write-day.ts';
import type { Season } from '#shared-calc/calendar/season.ts';

const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** A day in a sentence, without its year: `Friday 26 February`. */
export function sayDay(day: Day): string {
  return `${weekdays[weekdayOf(day) - 1]} ${dateWords(day)}`;
}

/** With its year: `Friday 26 February 2027`, or `Friday, February 26, 2027` where the month comes first. */
export function sayDate(day: Day, order?: DateOrder): string {
  return `${weekdays[weekdayOf(day) - 1]}${order === 'mdy' ? ',' : ''} ${sayPlainDate(day, order)}`;
}

/** Without its weekday: `26 February 2027`, or `February 26, 2027`. */
export function sayPlainDate(day: Day, order?: DateOrder): string {
  const year = Number(day.slice(0, 4));
  if (order !== 'mdy') return `${dateWords(day)} ${year}`;
  const [, month = 1, date = 1] = day.split('-').map(Number);
  return `${monthNames[month - 1]} ${date}, ${year}`;
}

/** `fresh only 1 October to 31 March` */
export function saySeasonDays({ from, to }: Season): string {
  return `fresh only ${dateWords(`0000-${from}`)} to ${dateWords(`0000-${to}`)}`;
}

/** `1 day`, `12 days` */
export function sayDays(days: number): string {
  return days === 1 ? '1 day' : `${days} days`;
}

function dateWords(day: Day): string {
  const [, month = 1, date = 1] = day.split('-').map(Number);
  return `${date} ${monthNames[month - 1]}`;
}
