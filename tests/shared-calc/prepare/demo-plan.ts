import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { planFacts, type PlanFacts } from '#shared-calc/prepare/plan-facts.ts';
import { prepPlan, type PlanWish, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import type { PlanStore } from '#shared-calc/prepare/planned-goods.ts';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { demoOnce, demoRecords } from '#tests/demo-bench.ts';

export const mondayToFriday: WorkCalendar = { openWeekdays: [1, 2, 3, 4, 5], closed: [] };

/** A Store that has whatever comes from stock. */
export const fullStore: PlanStore = { factOf: () => undefined, gives: () => Infinity };

interface PlannedOrder {
  readonly recipe?: string;
  readonly sizes?: readonly string[];
  readonly job?: Readonly<Record<string, string>>;
}

export function demoFacts(order: PlannedOrder, records: Records = demoRecords()): PlanFacts {
  const sizes = order.sizes ?? ['T05'];
  const facts = planFacts(demoOnce({ ...order, sizes }, records), sizes, {
    records,
    store: fullStore,
    on: '2026-11-25',
  });
  if (!facts.ok) throw new Error(JSON.stringify(facts.fault));
  return facts.value;
}

/** A plan of the demo on its own calendar, seen from a day long before all of its steps. */
export function demoPlan(order: PlannedOrder, wish: Partial<PlanWish>, records: Records = demoRecords()): PrepPlan {
  const plan = prepPlan(demoFacts(order, records), { on: '2026-11-25', calendar: calendarOf(records), ...wish });
  if (!plan.ok) throw new Error(JSON.stringify(plan.fault));
  return plan.value;
}

/** Each step as `[date, order by]`. */
export function stepDates(plan: PrepPlan): Readonly<Record<string, readonly (string | undefined)[]>> {
  return Object.fromEntries(
    plan.steps.map(({ step, date, orderBy }) => [step, orderBy === undefined ? [date] : [date, orderBy]]),
  );
}
