import { weekdayOf, type Day } from '#shared-calc/calendar/day.ts';
import { monthNames, type DateOrder } from '#shared-calc/calendar/write-day.ts';
import type { Season } from '#shared-calc/calendar/season.ts';

const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];

/** How a workshop writes days; the month comes first in `mdy` alone. */
export interface SaidDays {
  readonly dateOrder?: DateOrder;
}

/** A day in a sentence, without its year: `Friday 26 February`, or `Friday, February 26` where the month comes first. */
export function sayDay(day: Day, { dateOrder }: SaidDays): string {
  return `${weekdayIn(day, dateOrder)} ${dateWords(day, dateOrder)}`;
}

/** Without weekday and year: `26 February`, or `February 26`. */
export function sayDayAlone(day: Day, { dateOrder }: SaidDays): string {
  return dateWords(day, dateOrder);
}

/** With its year: `Friday 26 February 2027`, or `Friday, February 26, 2027` where the month comes first. */
export function sayDate(day: Day, days: SaidDays): string {
  return `${weekdayIn(day, days.dateOrder)} ${sayPlainDate(day, days)}`;
}

/** Without its weekday: `26 February 2027`, or `February 26, 2027`. */
export function sayPlainDate(day: Day, { dateOrder }: SaidDays): string {
  return `${dateWords(day, dateOrder)}${dateOrder === 'mdy' ? ',' : ''} ${Number(day.slice(0, 4))}`;
}

/** `fresh only 1 October to 31 March` */
export function saySeasonDays({ from, to }: Season, { dateOrder }: SaidDays): string {
  return `fresh only ${dateWords(`0000-${from}`, dateOrder)} to ${dateWords(`0000-${to}`, dateOrder)}`;
}

/** `1 day`, `12 days` */
export function sayDays(days: number): string {
  return days === 1 ? '1 day' : `${days} days`;
}

function weekdayIn(day: Day, order: DateOrder | undefined): string {
  return `${weekdays[weekdayOf(day) - 1]}${order === 'mdy' ? ',' : ''}`;
}

function dateWords(day: Day, order: DateOrder | undefined): string {
  const [, month = 1, date = 1] = day.split('-').map(Number);
  return order === 'mdy' ? `${monthNames[month - 1]} ${date}` : `${date} ${monthNames[month - 1]}`;
}
