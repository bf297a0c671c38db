import { parseDay } from '#shared-calc/calendar/day.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Field, KeyOf } from './field.ts';

/** A day, as `2027-07-19`. */
export function dayField<R>(key: KeyOf<R, string>, title: string, today: string): Field<R> {
  const dayOf = (record: R) => {
    const day: unknown = record[key];
    return typeof day === 'string' ? day : '';
  };
  return {
    key,
    title,
    unit: '',
    look: 'words',
    width: 7,
    show: dayOf,
    entry: dayOf,
    read: (text, record) => {
      const read = readDay(text, title, today);
      return read.ok ? ok({ ...record, [key]: read.value }) : failed(read.fault);
    },
  };
}

/** A day as it is written, or `today`. */
export function readDay(text: string, title: string, today: string): Result<string, string> {
  if (text.trim().toLowerCase() === 'today') return ok(today);
  const day = parseDay(text);
  if (day.ok) return ok(day.value);
  return failed(
    day.fault.why === 'form'
      ? `${title}: "${text.trim()}" is not a day; write it as ${today}.`
      : `${title}: there is no ${text.trim()} in the calendar.`,
  );
}
