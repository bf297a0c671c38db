import fc from 'fast-check';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { PlanFacts } from '#shared-calc/prepare/plan-facts.ts';
import type { Delivery } from '#shared-calc/prepare/planned-goods.ts';
import { dayAt } from './count-days.ts';

const delivery: fc.Arbitrary<Delivery> = fc.record({
  leadDays: fc.integer({ min: 0, max: 15 }),
  weekdays: fc.constantFrom([], [2, 3, 4], [1], [5, 1]),
});
const deliveries = fc.array(delivery, { maxLength: 2 });

export const anyFacts: fc.Arbitrary<PlanFacts> = fc
  .record({
    settleIn: fc.integer({ min: 0, max: 30 }),
    panelCure: fc.integer({ min: 0, max: 10 }),
    plantQuarantine: fc.integer({ min: 0, max: 40 }),
    springtailDays: fc.option(fc.integer({ min: 1, max: 40 }), { nil: undefined }),
    panel: fc.boolean(),
    leaves: fc.boolean(),
    clientTank: fc.boolean(),
    goods: fc.record({
      tank: fc.array(delivery, { minLength: 1, maxLength: 2 }),
      plants: deliveries,
      media: deliveries,
      panes: deliveries,
      lamps: deliveries,
      hardscape: deliveries,
      leaves: fc.constant([]),
    }),
  })
  .map(({ springtailDays, ...facts }) => ({ ...facts, ...(springtailDays !== undefined && { springtailDays }) }));

/** Days of 2027 to 2028 by their number. */
export const anyDay = fc.integer({ min: 0, max: 500 }).map((at) => dayAt('2027-01-01', at));

const closedRange = fc
  .tuple(fc.integer({ min: -200, max: 700 }), fc.integer({ min: 0, max: 12 }))
  .map(([at, long]) => ({ from: dayAt('2027-01-01', at), to: dayAt('2027-01-01', at + long) }));

export const anyCalendar: fc.Arbitrary<WorkCalendar> = fc.record({
  openWeekdays: fc.constantFrom([1, 2, 3, 4, 5], [1, 2, 3, 4, 5, 6]),
  closed: fc.array(closedRange, { maxLength: 6 }),
});

/** The same calendar with a few more closed days. */
export const closingMore: fc.Arbitrary<readonly [WorkCalendar, WorkCalendar]> = fc
  .tuple(anyCalendar, fc.array(closedRange, { minLength: 1, maxLength: 4 }))
  .map(([calendar, more]) => [calendar, { ...calendar, closed: [...calendar.closed, ...more] }]);
