import { addDays, daysBetween, parseDay, weekdayOf, type Day } from '#shared-calc/calendar/day.ts';
import { monthNames, writeDay, type DateOrder } from '#shared-calc/calendar/write-day.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';

/** What a day is read by. */
export interface DayReading {
  /** Left out for a list from a file: there `today` and a day without its year are not read. */
  readonly today?: string;
  readonly display?: { readonly dateOrder?: DateOrder };
  /** Without its year, a day of something that was done is the nearest; else it is the next. */
  readonly nearest?: boolean;
}

/**
 * Parses a day: `2027-05-12` always; `12 May 2027`, `May 12`, `Wed 12 May`; figures alone in the workshop's order,
 * `5/12/2027`. Figures with two readings that no order decides are refused with both.
 */
export function readDay(text: string, name: string, reading: DayReading = {}): Result<Day, EntryFault> {
  const tidy = text.trim().replaceAll(/\s+/g, ' ');
  const { today, display: { dateOrder = 'ymd' } = {} } = reading;
  const near = nearWords(tidy.toLowerCase(), today);
  if (near !== undefined) return ok(near);
  if (tidy === '') return failed({ kind: 'empty', name, wants: 'day' });
  const parts = inWords(tidy) ?? inFigures(tidy, dateOrder);
  const days = [...new Set(parts.flatMap((each) => dayOf(each, reading)))];
  const [only] = days;
  if (only === undefined) return failed(faultOf(tidy, name, { parts, today, dateOrder }));
  if (days.length === 1) return ok(only);
  return failed({ kind: 'two-readings', name, text: tidy, readings: days.map((each) => writeDay(each, dateOrder)) });
}

function nearWords(word: string, today: Day | undefined): Day | undefined {
  if (today === undefined) return undefined;
  const away = { today: 0, tomorrow: 1, yesterday: -1 }[word];
  return away === undefined ? undefined : addDays(today, away);
}

/** The parts of a day, as they may be meant. */
interface DayParts {
  readonly year?: number | undefined;
  readonly month: number;
  readonly date: number;
  /** 1 Monday to 7 Sunday, where it was written. */
  readonly weekday?: number | undefined;
}

const dayFirst =
  /^(?:(?<week>[a-z]{3,9})\.?,? )?(?<date>\d{1,2})(?:st|nd|rd|th|\.)? ?(?<month>[a-z]{3,9})\.?(?:,? (?<year>\d{4}))?$/i;
const monthFirst =
  /^(?:(?<week>[a-z]{3,9})\.?,? )?(?<month>[a-z]{3,9})\.? (?<date>\d{1,2})(?:st|nd|rd|th)?(?:,? (?<year>\d{4}))?$/i;
const weekdayNames = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'];

/** A day with its month in words; `undefined` for any other text. */
function inWords(text: string): readonly DayParts[] | undefined {
  const groups = (dayFirst.exec(text) ?? monthFirst.exec(text))?.groups;
  const month = begun(groups?.['month'], monthNames);
  if (!groups || month === undefined) return undefined;
  const weekday = begun(groups['week'], weekdayNames);
  if (groups['week'] !== undefined && weekday === undefined) return undefined;
  return [{ year: numberOf(groups['year']), month, date: Number(groups['date']), weekday }];
}

function begun(word: string | undefined, names: readonly string[]): number | undefined {
  const at = word === undefined ? -1 : names.findIndex((name) => name.toLowerCase().startsWith(word.toLowerCase()));
  return at < 0 ? undefined : at + 1;
}

function numberOf(digits: string | undefined): number | undefined {
  if (digits === undefined) return undefined;
  return digits.length === 2 ? 2000 + Number(digits) : Number(digits);
}

const yearFirst = /^(\d{4})[./-](\d{1,2})[./-](\d{1,2})$/;
const figures = /^(\d{1,2})([./-])(\d{1,2})(?:\2(\d{4}|\d{2})?)?$/;

/** A day in figures alone. Points between them stand in no order with the month first. */
function inFigures(text: string, order: DateOrder): readonly DayParts[] {
  const [, wholeYear, ofYear, ofMonth] = yearFirst.exec(text) ?? [];
  if (wholeYear !== undefined) return [{ year: Number(wholeYear), month: Number(ofYear), date: Number(ofMonth) }];
  const [, first, sign, second, year] = figures.exec(text) ?? [];
  if (first === undefined || (order === 'ymd' && year === undefined)) return [];
  const byDay = { year: numberOf(year), month: Number(second), date: Number(first) };
  const byMonth = { year: numberOf(year), month: Number(first), date: Number(second) };
  if (order === 'dmy') return [byDay];
  return order === 'mdy' && sign !== '.' ? [byMonth] : [byDay, byMonth];
}

/** The day of its parts, if there is one in the calendar. */
function dayOf(parts: DayParts, { today, nearest = false }: DayReading): readonly Day[] {
  const { year, weekday } = parts;
  if (year !== undefined) return inYear(parts, year).filter((day) => isWeekday(day, weekday));
  if (today === undefined) return [];
  const thisYear = Number(today.slice(0, 4));
  const years = [thisYear - 1, thisYear, thisYear + 1, thisYear + 2, thisYear + 3, thisYear + 4];
  const days = years.flatMap((each) => inYear(parts, each)).filter((day) => isWeekday(day, weekday));
  const wanted = nearest
    ? days.toSorted((a, b) => awayFrom(a, today) - awayFrom(b, today))
    : days.filter((day) => day >= today);
  return wanted.slice(0, 1);
}

function awayFrom(day: Day, today: Day): number {
  return Math.abs(daysBetween(today, day));
}

function isWeekday(day: Day, weekday: number | undefined): boolean {
  return weekday === undefined || weekdayOf(day) === weekday;
}

function inYear({ month, date }: DayParts, year: number): readonly Day[] {
  const two = (part: number) => String(part).padStart(2, '0');
  const read = parseDay(`${String(year).padStart(4, '0')}-${two(month)}-${two(date)}`);
  return read.ok ? [read.value] : [];
}

interface NoDay {
  readonly parts: readonly DayParts[];
  readonly today: string | undefined;
  readonly dateOrder: DateOrder;
}

function faultOf(text: string, name: string, { parts, today, dateOrder }: NoDay): EntryFault {
  if (parts.length === 1 && (today !== undefined || parts[0]?.year !== undefined))
    return { kind: 'no-such-day', name, text };
  const like = today === undefined ? undefined : writeDay(today, dateOrder);
  return { kind: 'not-a-day', name, text, ...(like !== undefined && { like }) };
}
