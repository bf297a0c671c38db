import type { Day } from './day.ts';

/** How a workshop writes days: `2027-05-12`, `12 May 2027` or `May 12, 2027`. */
export type DateOrder = 'ymd' | 'dmy' | 'mdy';

export const monthNames = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** A day as the workshop writes it, which every reader of days takes back. */
export function writeDay(day: Day, order: DateOrder = 'ymd'): string {
  if (order === 'ymd') return day;
  const year = Number(day.slice(0, 4));
  return order === 'dmy' ? `${writeShortDay(day, order)} ${year}` : `${writeShortDay(day, order)}, ${year}`;
}

/** A day without its year, for a narrow place: `12 May`, `May 12` where the month comes first. */
export function writeShortDay(day: Day, order: DateOrder = 'ymd'): string {
  const [, month = 1, date] = day.split('-').map(Number);
  const name = (monthNames[month - 1] ?? '').slice(0, 3);
  return order === 'mdy' ? `${name} ${date}` : `${date} ${name}`;
}
