import { addDays, differenceInCalendarDays, eachDayOfInterval, format, getISODay, parseISO } from 'date-fns';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { PlanFacts } from '#shared-calc/prepare/plan-facts.ts';
import type { Delivery } from '#shared-calc/prepare/planned-goods.ts';
import { prepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { anyCalendar, anyDay, anyFacts } from '#tests/shared-calc/prepare/any-plan.ts';

/*
 * Whole plans against the npm package `date-fns` (MIT) as an independent calendar, 2,000 of them at random: leads in
 * working days, waits in calendar days, a closed day or one without a delivery moved to the earlier one.
 */

const RUNS = 2_000;
const say = (day: Date) => format(day, 'yyyy-MM-dd');

/** A calendar of date-fns: which days are open, and steps over them. */
function theirCalendar({ openWeekdays, closed }: WorkCalendar) {
  const shut = new Set(
    closed.flatMap(({ from, to }) => eachDayOfInterval({ start: parseISO(from), end: parseISO(to) })).map(Number),
  );
  const isOpen = (day: Date) => openWeekdays.includes(getISODay(day)) && !shut.has(Number(day));
  const until = (day: Date, step: 1 | -1, holds: (day: Date) => boolean): Date =>
    holds(day) ? day : until(addDays(day, step), step, holds);
  const shift = (day: Date, count: number): Date => {
    const step = count < 0 ? -1 : 1;
    let at = day;
    for (let left = Math.abs(count); left > 0; left -= 1) at = until(addDays(at, step), step, isOpen);
    return at;
  };
  const comes = (weekdays: readonly number[]) => (day: Date) =>
    isOpen(day) && (weekdays.length === 0 || weekdays.includes(getISODay(day)));
  return {
    shift,
    next: (day: Date) => until(day, 1, isOpen),
    before: (day: Date) => until(day, -1, isOpen),
    nextComing: (day: Date, weekdays: readonly number[]) => until(day, 1, comes(weekdays)),
    lastComing: (day: Date, weekdays: readonly number[]) => until(day, -1, comes(weekdays)),
  };
}

type TheirCalendar = ReturnType<typeof theirCalendar>;
const goods = ['tank', 'plants', 'media', 'panes', 'lamps', 'hardscape'] as const;

/** The first build once goods of a step are in. */
function afterArrival(step: (typeof goods)[number], day: Date, facts: PlanFacts, of: TheirCalendar): Date {
  if (step === 'plants') return of.next(addDays(day, facts.plantQuarantine));
  if (step === 'media') return of.shift(day, 2);
  const glued = of.shift(day, 1);
  const isGlued = facts.panel && (step === 'tank' || step === 'hardscape');
  return isGlued ? of.next(addDays(glued, facts.panelCure)) : glued;
}

/** The last day on which goods of a step may come in for a build. */
function lastArrival(step: (typeof goods)[number], build: Date, facts: PlanFacts, of: TheirCalendar): Date {
  if (step === 'plants') return of.before(addDays(build, -facts.plantQuarantine));
  if (step === 'media') return of.shift(build, -2);
  const isGlued = facts.panel && (step === 'tank' || step === 'hardscape');
  return of.shift(isGlued ? of.before(addDays(build, -facts.panelCure)) : build, -1);
}

function firstBuild(facts: PlanFacts, start: Date, of: TheirCalendar): Date {
  const { springtailDays, leaves, clientTank, panel, panelCure } = facts;
  const arrival = ({ leadDays, weekdays }: Delivery) => of.nextComing(of.shift(start, leadDays), weekdays);
  const ready = goods.flatMap((step) => facts.goods[step].map((each) => afterArrival(step, arrival(each), facts, of)));
  const nextDay = of.shift(start, 1);
  if (springtailDays !== undefined) ready.push(of.next(addDays(start, springtailDays)));
  if (leaves || clientTank) ready.push(nextDay);
  if (clientTank && panel) ready.push(of.next(addDays(nextDay, panelCure)));
  return ready.toSorted((one, other) => Number(other) - Number(one))[0] ?? start;
}

interface Wish {
  readonly on: string;
  readonly handover: string;
}

function theirPlan(facts: PlanFacts, { on, handover }: Wish, of: TheirCalendar) {
  const wanted = parseISO(handover);
  const ready = firstBuild(facts, of.next(parseISO(on)), of);
  const asWanted = of.before(addDays(wanted, -facts.settleIn));
  const isKept = ready <= asWanted;
  const build = isKept ? asWanted : ready;
  const settled = isKept ? wanted : of.next(addDays(ready, facts.settleIn));
  const orders = goods.map((step) => {
    const last = lastArrival(step, build, facts, of);
    const days = facts.goods[step].map(({ leadDays, weekdays }) => of.shift(of.lastComing(last, weekdays), -leadDays));
    return days.map(say).toSorted()[0];
  });
  return { build: say(build), handover: say(settled), late: differenceInCalendarDays(settled, wanted), orders };
}

describe('prep plans against an independent calendar', () => {
  test('2,000 of them: the same build, handover, lateness and days to order', () => {
    fc.assert(
      fc.property(anyFacts, anyDay, anyCalendar, fc.integer({ min: -10, max: 150 }), (facts, on, calendar, away) => {
        const handover = say(addDays(parseISO(on), away));
        const ours = prepPlan(facts, { on, handover, calendar });
        if (!ours.ok) throw new Error(JSON.stringify(ours.fault));
        const { steps, ...plan } = ours.value;
        const orderOf = (step: (typeof goods)[number]) => steps.find((each) => each.step === step)?.orderBy;
        expect({ build: plan.build, handover: plan.handover, late: plan.late, orders: goods.map(orderOf) }).toEqual(
          theirPlan(facts, { on, handover }, theirCalendar(calendar)),
        );
      }),
      { numRuns: RUNS },
    );
  }, 180_000);
});
