import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { nextOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { Refusal } from '#shared-calc/trade/first-refusal.ts';
import { neverOpen, noDay, noDayCount } from './refuse-date.ts';
import { listFunction } from '#shared-calc/trade/trade-function.ts';

/** Days of service after a handover, each moved to the next open day. Offsets are whole calendar days. */
export function serviceDates(
  handover: Day,
  offsets: readonly number[],
  calendar: WorkCalendar,
): readonly Day[] | Refusal {
  const wrong =
    noDay(handover) ??
    neverOpen(calendar) ??
    offsets.map((offset) => noDayCount('A service', offset)).find((refusal) => refusal !== undefined);
  return wrong ?? offsets.map((offset) => nextOpen(addDays(handover, offset), calendar));
}

export const serviceDatesEntry = listFunction({
  name: 'SERVICE_DATES',
  title: 'Service dates',
  group: 'dates',
  takes: 'handover, days after it, open weekdays, closed days',
  gives: 'days',
  sum: 'handover + each, moved to the next open day',
  help: 'Usual: 7, 28, 91, 182, 273 and 365 days after the handover.',
  examples: [
    {
      rule: '17 Sep 2027 + 7, 28, 91, 182, 273, 365',
      gives: '24 Sep, 15 Oct, 17 Dec 2027, 17 Mar, 16 Jun, 18 Sep 2028',
    },
    { rule: '28 Apr 2027 + 7, 28', gives: '5 May, 26 May 2027' },
  ],
  source: 'calendar',
});
