import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WorkCalendar } from '#shared-calc/calendar/work-calendar.ts';
import type { PlanFacts } from '#shared-calc/prepare/plan-facts.ts';
import type { Delivery } from '#shared-calc/prepare/planned-goods.ts';
import { prepPlan, type PlanWish, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { anyCalendar, anyDay, anyFacts, closingMore } from './any-plan.ts';
import { dayAt, firstOpenFrom, isOpenDay, lastOpenWhere, nextComing, openDaysAfter } from './count-days.ts';
import { mondayToFriday, stepDates } from './demo-plan.ts';

function planned(facts: PlanFacts, wish: PlanWish): PrepPlan {
  const plan = prepPlan(facts, wish);
  if (!plan.ok) throw new Error(JSON.stringify(plan.fault));
  return plan.value;
}

/** The earliest build day after goods arrive or a step starts. */
type After = (day: string) => string;

/** Every step of an order: how its goods arrive, and what follows. */
function stepsOf(facts: PlanFacts, calendar: WorkCalendar) {
  const aDayBefore: After = (day) => openDaysAfter(day, 1, calendar);
  const cured: After = (day) => firstOpenFrom(dayAt(openDaysAfter(day, 1, calendar), facts.panelCure), calendar);
  const cleared: After = (day) => firstOpenFrom(dayAt(day, facts.plantQuarantine), calendar);
  const beforeGluing = facts.panel ? cured : aDayBefore;
  const { goods } = facts;
  return [
    { step: 'tank', from: goods.tank, after: beforeGluing },
    { step: 'plants', from: goods.plants, after: cleared },
    { step: 'media', from: goods.media, after: (day: string) => openDaysAfter(day, 2, calendar) },
    { step: 'panes', from: goods.panes, after: aDayBefore },
    { step: 'lamps', from: goods.lamps, after: aDayBefore },
    { step: 'hardscape', from: goods.hardscape, after: beforeGluing },
  ];
}

function arrival(ordered: string, { leadDays, weekdays }: Delivery, calendar: WorkCalendar): string {
  return nextComing(openDaysAfter(ordered, leadDays, calendar), weekdays, calendar);
}

/** The first build day for an order placed on a day, counted forward. */
function firstBuild(facts: PlanFacts, start: string, calendar: WorkCalendar): string {
  const { springtailDays, leaves, clientTank, panel } = facts;
  const ready = stepsOf(facts, calendar).flatMap(({ from, after }) =>
    from.map((delivery) => after(arrival(start, delivery, calendar))),
  );
  if (springtailDays !== undefined) ready.push(firstOpenFrom(dayAt(start, springtailDays), calendar));
  if (leaves || clientTank) ready.push(openDaysAfter(start, 1, calendar));
  const glued = openDaysAfter(start, 1, calendar);
  if (clientTank && panel) ready.push(firstOpenFrom(dayAt(glued, facts.panelCure), calendar));
  return ready.toSorted().at(-1) ?? start;
}

describe('prepPlan', () => {
  test('each order-by day is the last open day from which the goods still make the build, found by trying', () => {
    fc.assert(
      fc.property(anyFacts, anyDay, anyCalendar, (facts, on, calendar) => {
        const plan = planned({ ...facts, clientTank: false }, { on, calendar });
        for (const { step, from, after } of stepsOf(facts, calendar)) {
          const last = from.map((delivery) =>
            lastOpenWhere(plan.build, calendar, (day) => after(arrival(day, delivery, calendar)) <= plan.build),
          );
          const found = plan.steps.find((each) => each.step === step);
          expect(found?.orderBy).toBe(last.toSorted()[0]);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('from the next open day on, the build is the first on which every chain is over, counted day by day', () => {
    fc.assert(
      fc.property(anyFacts, anyDay, anyCalendar, (facts, on, calendar) => {
        const build = firstBuild(facts, firstOpenFrom(on, calendar), calendar);
        const { late, ...plan } = planned(facts, { on, calendar });
        expect([plan.build, plan.handover, late]).toEqual([
          build,
          firstOpenFrom(dayAt(build, facts.settleIn), calendar),
          0,
        ]);
      }),
      { numRuns: 100 },
    );
  });

  test('a handover that can be kept stands; one that cannot moves by the days it is late, to an open day', () => {
    fc.assert(
      fc.property(anyFacts, anyDay, anyCalendar, fc.integer({ min: -10, max: 150 }), (facts, on, calendar, away) => {
        const handover = dayAt(on, away);
        const plan = planned(facts, { on, calendar, handover });
        const asWanted = lastOpenWhere(dayAt(handover, -facts.settleIn), calendar, () => true);
        expect(plan.handover).toBe(dayAt(handover, plan.late));
        expect(isOpenDay(plan.build, calendar)).toBe(true);
        expect(plan.late > 0 ? isOpenDay(plan.handover, calendar) : plan.build === asWanted).toBe(true);
      }),
      { numRuns: 80 },
    );
  });

  test('a plan from an open day asks for nothing before that day', () => {
    fc.assert(
      fc.property(anyFacts, anyDay, anyCalendar, (facts, day, calendar) => {
        const on = firstOpenFrom(day, calendar);
        const plan = planned(facts, { on, calendar, handover: on });
        const days = plan.steps.flatMap(({ date, orderBy = date }) => [date, orderBy]);
        expect(days.filter((each) => each < on)).toEqual([]);
        expect(plan.decides.by >= on).toBe(true);
      }),
      { numRuns: 80 },
    );
  });

  test('more closed days never bring the build nearer', () => {
    fc.assert(
      fc.property(anyFacts, anyDay, closingMore, (facts, on, [fewer, more]) => {
        expect(planned(facts, { on, calendar: more }).build >= planned(facts, { on, calendar: fewer }).build).toBe(
          true,
        );
      }),
      { numRuns: 80 },
    );
  });

  test('more closed days never let one order later for the same handover', () => {
    const firstDays = (facts: PlanFacts, calendar: WorkCalendar) =>
      planned(facts, { on: '2020-01-01', calendar, handover: '2028-03-01' }).steps.map(
        ({ date, orderBy = date }) => orderBy,
      );
    fc.assert(
      fc.property(anyFacts, closingMore, (facts, [fewer, more]) => {
        const before = firstDays(facts, fewer);
        expect(firstDays(facts, more).filter((day, at) => day > (before[at] ?? ''))).toEqual([]);
      }),
      { numRuns: 80 },
    );
  });

  const facts: PlanFacts = {
    settleIn: 21,
    panelCure: 7,
    plantQuarantine: 30,
    panel: true,
    leaves: false,
    clientTank: false,
    goods: {
      tank: [
        { leadDays: 10, weekdays: [] },
        { leadDays: 3, weekdays: [1] },
      ],
      plants: [],
      media: [],
      panes: [],
      lamps: [],
      hardscape: [],
      leaves: [],
    },
  };

  test('tanks of two makers are in when the last is, and the first order-by day is told', () => {
    // Glued Wed 31 Mar; the one in on Tue 30, ordered Tue 16; the other comes on Mondays: Mon 29, ordered Wed 24.
    const plan = planned(facts, { on: '2026-11-25', handover: '2027-04-28', calendar: mondayToFriday });
    expect([stepDates(plan), plan.because]).toEqual([
      { tank: ['2027-03-30', '2027-03-16'], panel: ['2027-03-31'], build: ['2027-04-07'] },
      'tank delivery and background cure',
    ]);
  });

  test('a workshop that is closed to the end of its calendar has no plan, and it is said so', () => {
    const calendar = { openWeekdays: [1, 2, 3, 4, 5], closed: [{ from: '2027-01-05', to: '9999-12-31' }] };
    expect(prepPlan(facts, { on: '2027-01-04', calendar })).toEqual({ ok: false, fault: { kind: 'off-calendar' } });
  });

  test('closed for the whole of 2027: what is ordered on its first day is built in 2028', () => {
    // Ordered Mon 3 Jan 2028: ten working days later is Mon 17, glued Tue 18, cured Tue 25.
    const calendar = { openWeekdays: [1, 2, 3, 4, 5], closed: [{ from: '2027-01-01', to: '2027-12-31' }] };
    const plan = planned(facts, { on: '2027-01-01', calendar });
    expect([plan.build, stepDates(plan)['panel'], stepDates(plan)['tank']?.[0]]).toEqual([
      '2028-01-25',
      ['2028-01-18'],
      '2028-01-17',
    ]);
  });

  test('a supplier who comes only on days that are closed is refused, and which goods it is about is told', () => {
    const media = [{ leadDays: 3, weekdays: [7] }];
    const plan = prepPlan(
      { ...facts, goods: { ...facts.goods, media } },
      { on: '2027-01-04', calendar: mondayToFriday },
    );
    expect(plan).toEqual({ ok: false, fault: { kind: 'never-delivered', what: 'media' } });
  });
});
