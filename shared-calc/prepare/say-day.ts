import { weekdayOf, type Day } from '#shared-calc/calendar/day.ts';

const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const months = [
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
];

/** A day as it is spoken, without its year: `Friday 26 February`. */
export function sayDay(day: Day): string {
  const [, month = 1, date = 1] = day.split('-').map(Number);
  return `${weekdays[weekdayOf(day) - 1]} ${date} ${months[month - 1]}`;
}
