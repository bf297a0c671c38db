import { Temporal } from 'temporal-polyfill';
import type { Day } from './day.ts';

/** A day of any year: `10-01`. */
export const YEAR_DAY =
  /^(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|02-(?:0[1-9]|1\d|2\d))$/;

/** A part of each year, both ends in it; it may run over the end of the year. */
export interface Season {
  readonly from: string;
  readonly to: string;
}

export function isInSeason(day: Day, { from, to }: Season): boolean {
  const at = day.slice(-'10-01'.length);
  return from <= to ? from <= at && at <= to : from <= at || at <= to;
}

/** The day itself if it is in the season, otherwise the next first day of it. */
export function nextInSeason(day: Day, season: Season): Day {
  if (isInSeason(day, season)) return day;
  const first = inYear(day, season.from, 0);
  return first >= day ? first : inYear(day, season.from, 1);
}

/** The day itself if it is in the season, otherwise the last day of the season before it. */
export function previousInSeason(day: Day, season: Season): Day {
  if (isInSeason(day, season)) return day;
  const last = inYear(day, season.to, 0);
  return last <= day ? last : inYear(day, season.to, -1);
}

/** In the year of a day, or so many years later; a 29 February that the year lacks is its 28th. */
function inYear(day: Day, yearDay: string, later: number): Day {
  const { year } = Temporal.PlainDate.from(day);
  const [month = 1, date = 1] = yearDay.split('-').map(Number);
  return Temporal.PlainDate.from({ year: year + later, month, day: date }).toString();
}
