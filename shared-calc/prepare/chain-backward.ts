import { addDays, type Day } from '#shared-calc/calendar/day.ts';
import { previousDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import { previousOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { ChainStep } from '#shared-calc/trade/dates/ready-date.ts';

/**
 * A chain of waits backward from the day they must be over: the last day on which each may begin, and that day
 * itself at the end. A closed day, and one without a delivery, moves to the earlier one.
 * `undefined` where the supplier never comes on a day that is open.
 */
export function chainBackward(
  end: Day,
  waits: readonly ChainStep[],
  calendar: WorkCalendar,
): readonly Day[] | undefined {
  const found = [end];
  let at = end;
  for (const wait of waits.toReversed()) {
    const before = stepBack(at, wait, calendar);
    if (before === undefined) return undefined;
    at = before;
    found.unshift(at);
  }
  return found;
}

function stepBack(day: Day, step: ChainStep, calendar: WorkCalendar): Day | undefined {
  switch (step.wait) {
    case 'workdays':
      return shiftWorkdays(day, -step.count, calendar);
    case 'days':
      return previousOpen(addDays(day, -step.count), calendar);
    case 'delivery':
      return previousDeliveryDay(day, step.weekdays, calendar);
    case 'open':
      return previousOpen(day, calendar);
  }
}
