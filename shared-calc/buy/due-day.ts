import type { Day } from '#shared-calc/calendar/day.ts';
import { nextDeliveryDay } from '#shared-calc/calendar/delivery-day.ts';
import { shiftWorkdays } from '#shared-calc/calendar/shift-workdays.ts';
import { nextOpen, type WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { Records, Supplier } from '#shared-calc/records/records.ts';

export interface Ordered {
  readonly supplier: Supplier;
  readonly on: Day;
  readonly calendar: WorkCalendar;
}

type DueRecords = Pick<Records, 'material' | 'tank' | 'quoteLine'>;

/**
 * The day on which goods come that are ordered on a day: an order of a closed day goes out on the next open one. A
 * supplier that never delivers on an open day comes when the lead is over.
 */
export function dueDay(goods: string, { supplier, on, calendar }: Ordered, records: DueRecords): Day {
  const ready = shiftWorkdays(nextOpen(on, calendar), leadDaysOf(goods, supplier, records), calendar);
  return nextDeliveryDay(ready, supplier.deliveryWeekdays ?? [], calendar) ?? ready;
}

function leadDaysOf(goods: string, supplier: Supplier, { material, tank, quoteLine }: DueRecords): number {
  const own = material.get(goods)?.leadDays ?? quoteLine.get(goods)?.leadDays;
  return own ?? (tank.has(goods) ? supplier.tankLeadDays : undefined) ?? supplier.leadDays;
}
