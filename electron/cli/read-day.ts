import { parseDay, type Day } from '#shared-calc/calendar/day.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { Arguments } from './read-arguments.ts';

/**
 * The day of an option; `undefined` if absent. The fault distinguishes a wrong format from a day that does not exist.
 */
export function readDay(given: Arguments, name: string): Result<Day | undefined, string> {
  const text = given.text(name);
  if (text === undefined) return ok(undefined);
  const day = parseDay(text);
  if (day.ok) return day;
  const says = day.fault.why === 'form' ? 'write the day as 2026-11-25.' : 'there is no such day.';
  return failed(`--${name} ${text}: ${says}`);
}
