import { YEAR_DAY, type Season } from '#shared-calc/calendar/season.ts';
import { failed, ok, type Result } from '#shared-calc/result.ts';
import type { EntryFault } from './entry-fault.ts';

/** `10-01 to 03-31` */
export function writeSeason({ from, to }: Season): string {
  return `${from} to ${to}`;
}

/** Parses `10-01 to 03-31`, the first and the last day, each as month and day. */
export function readSeason(text: string, name: string): Result<Season, EntryFault> {
  const [from = '', to = '', ...more] = text.trim().split(/\s+to\s+/);
  if (more.length > 0 || !YEAR_DAY.test(from) || !YEAR_DAY.test(to)) {
    return failed({
      kind: 'other-form',
      name,
      says: 'A season is written as 10-01 to 03-31: month and day, the first and the last.',
    });
  }
  return ok({ from, to });
}
