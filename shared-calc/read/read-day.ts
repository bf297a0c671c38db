import { parseDay } from '#shared-calc/calendar/day.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';

/**
 * Parses a day as `2027-07-19`, or `today` if that day is given. A day such as `3/4/2027` is refused, with both days
 * that it may be.
 */
export function readDay(text: string, name: string, today?: string): Result<string, EntryFault> {
  const tidy = text.trim();
  if (today !== undefined && tidy.toLowerCase() === 'today') return ok(today);
  if (tidy === '') return failed({ kind: 'empty', name, wants: 'day' });
  const day = parseDay(tidy);
  if (day.ok) return day;
  if (day.fault.why === 'no such day') return failed({ kind: 'no-such-day', name, text: tidy });
  const readings = shortDays(tidy);
  if (readings.length > 1) return failed({ kind: 'two-readings', name, text: tidy, readings });
  const like = readings[0] ?? today;
  return failed({ kind: 'not-a-day', name, text: tidy, ...(like !== undefined && { like }) });
}

/** The days that `3/4/2027` or `3.4.2027` may be: day first or month first. */
function shortDays(text: string): readonly string[] {
  const [, first = '', second = '', year = ''] = /^(\d{1,2})[./-](\d{1,2})[./-](\d{4})$/.exec(text) ?? [];
  const days = [
    [second, first],
    [first, second],
  ].flatMap(([month = '', day = '']) => {
    const read = parseDay(`${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`);
    return read.ok ? [read.value] : [];
  });
  return [...new Set(days)];
}
