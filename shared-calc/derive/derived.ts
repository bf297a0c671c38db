import type { Day } from '#shared-calc/calendar/day.ts';
import type { Records } from '#shared-calc/records/records.ts';

/** A book's records on a day, and what is worked from them. */
export interface Derived {
  readonly records: Records;
  readonly today: Day;
}
