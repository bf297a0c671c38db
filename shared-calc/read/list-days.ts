import { parseDay, type Day } from '#shared-calc/calendar/day.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';

/** Which comes first in a day of figures alone: year, day or month. */
export type DateOrder = 'ymd' | 'dmy' | 'mdy';

const orders: readonly DateOrder[] = ['ymd', 'dmy', 'mdy'];
const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'];
const word = String.raw`(?<word>${months.join('|')})[a-z]*\.?`;
const day = String.raw`(?<day>\d{1,2})`;
const suffix = '(?:st|nd|rd|th)?';
const sign = String.raw`\s*[ ./-]\s*`;

/** Days that have one reading: with the year first, or the month as a word. */
const plainForms: readonly RegExp[] = [
  /^(?<year>\d{4})([./-])(?<month>\d{1,2})\2(?<day>\d{1,2})$/,
  /^(?<year>\d{4})(?<month>\d{2})(?<day>\d{2})$/,
  new RegExp(String.raw`^${day}${suffix}${sign}${word}(?:${sign}|,\s*)(?<year>\d{4}|\d{2})$`, 'i'),
  new RegExp(String.raw`^${word}${sign}${day}${suffix}(?:,\s*|\s+)(?<year>\d{4})$`, 'i'),
];
const inFigures = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4}|\d{2})$/;

/** The day that a text is in each order; an order in which it is no day is left out. */
function daysOf(text: string): ReadonlyMap<DateOrder, Day> {
  const tidy = withoutHour(text);
  const plain = plainDay(tidy);
  if (plain !== undefined) return new Map(orders.map((order) => [order, plain]));
  const [, first = '', , second = '', third = ''] = inFigures.exec(tidy) ?? [];
  if (first === '') return new Map();
  return new Map(
    orders.flatMap((order): (readonly [DateOrder, Day])[] => {
      const its = dayIn(order, [first, second, third]);
      return its === undefined ? [] : [[order, its]];
    }),
  );
}

/** The one order in which every text that is a day at all is a day; `undefined` if there is none, or several. */
export function orderOf(texts: Iterable<string>): DateOrder | undefined {
  const possible = new Set<DateOrder>(orders);
  for (const text of texts) {
    const days = daysOf(text);
    if (days.size === 0) continue;
    for (const order of orders) if (!days.has(order)) possible.delete(order);
  }
  const [only, ...others] = possible;
  return others.length === 0 ? only : undefined;
}

/** Parses a day of a list in an order; without one, a text that may be several days is refused with all of them. */
export function readListDay(text: string, name: string, order?: DateOrder): Result<Day, EntryFault> {
  const tidy = text.trim();
  if (tidy === '') return failed({ kind: 'empty', name, wants: 'day' });
  const days = daysOf(tidy);
  const readings = order === undefined ? [...new Set(days.values())] : [days.get(order) ?? []].flat();
  const [only, ...others] = readings;
  if (only === undefined) return failed({ kind: isInForm(tidy) ? 'no-such-day' : 'not-a-day', name, text: tidy });
  return others.length === 0 ? ok(only) : failed({ kind: 'two-readings', name, text: tidy, readings });
}

/** `2027-01-12T00:00:00` and `12/01/2027 00:00` are days with an hour behind. */
function withoutHour(text: string): string {
  return text.trim().replace(/[T ]+\d{1,2}:\d{2}(:\d{2}(\.\d+)?)?\s*([ap]m|Z)?$/i, '');
}

function isInForm(text: string): boolean {
  return [...plainForms, inFigures].some((form) => form.test(withoutHour(text)));
}

function plainDay(text: string): Day | undefined {
  for (const form of plainForms) {
    const { year = '', month, word: named = '', day: its = '' } = form.exec(text)?.groups ?? {};
    if (year !== '') return dayOf(year, month ?? monthOf(named), its);
  }
  return undefined;
}

function monthOf(named: string): string {
  return String(months.indexOf(named.toLowerCase()) + 1);
}

function dayIn(order: DateOrder, [one, two, three]: readonly [string, string, string]): Day | undefined {
  if (order === 'ymd') return three.length === 2 ? dayOf(one, two, three) : undefined;
  return order === 'dmy' ? dayOf(three, two, one) : dayOf(three, one, two);
}

/** Two digits are a year of this century. */
function dayOf(year: string, month: string, its: string): Day | undefined {
  const years = year.length <= 2 ? `20${year.padStart(2, '0')}` : year;
  const read = parseDay(`${years}-${month.padStart(2, '0')}-${its.padStart(2, '0')}`);
  return read.ok ? read.value : undefined;
}
