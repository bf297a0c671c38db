import type { Day } from '#shared-calc/calendar/day.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import { firstRefusal, type Refusal } from '#shared-calc/trade/first-refusal.ts';
import { listFunction } from '#shared-calc/trade/trade-function.ts';
import { workdayShift } from './workday-shift.ts';

export interface OrderLead {
  /** Both in working days. */
  readonly lead: number;
  readonly buffer: number;
}

/** The last day to order goods needed on a day: back by lead and buffer in working days. */
export function orderBy(need: Day, { lead, buffer }: OrderLead, calendar: WorkCalendar): Day | Refusal {
  const wrong = firstRefusal([
    [lead < 0, 'The lead cannot be below zero.'],
    [buffer < 0, 'The buffer cannot be below zero.'],
  ]);
  return wrong ?? workdayShift(need, -(lead + buffer), calendar);
}

export const orderByEntry = listFunction({
  name: 'ORDER_BY',
  title: 'Order by',
  group: 'dates',
  takes: 'day of need, lead and buffer in working days, open weekdays, closed days',
  gives: 'day',
  sum: 'the day of need less lead and buffer in working days',
  help: 'The last day on which to order.',
  examples: [
    { rule: '30 Mar 2027, lead 10, buffer 0', gives: '16 Mar 2027' },
    { rule: '1 Sep 2027, lead 2, buffer 1, closed 30 Aug', gives: '26 Aug 2027' },
  ],
  source: 'calendar',
});
