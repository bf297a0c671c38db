import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isOpen } from '#shared-calc/calendar/work-calendar.ts';
import type { PlanFacts } from '#shared-calc/prepare/plan-facts.ts';
import { prepPlan, type PlanWish, type PrepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { goodsSteps, type GoodsStep } from '#shared-calc/prepare/prep-steps.ts';
import { withFacts, type FactWhat, type StepFact } from '#shared-calc/prepare/step-facts.ts';
import { anyCalendar, anyDay, anyFacts } from './any-plan.ts';
import { dayAt, firstOpenFrom } from './count-days.ts';

/* Laws of the plan as a state, over random orders, calendars, mornings and facts. */

const RUNS = { numRuns: 120 };

function planned(facts: PlanFacts, wish: PlanWish): PrepPlan {
  const plan = prepPlan(facts, wish);
  if (!plan.ok) throw new Error(JSON.stringify(plan.fault));
  return plan.value;
}

const factKinds: readonly (readonly [StepFact['step'], FactWhat])[] = [
  ...goodsSteps.flatMap((step) => [[step, 'due'] as const, [step, 'in'] as const]),
  ['panel', 'done'],
  ['springtails', 'started'],
  ['springtails', 'done'],
  ['leaves', 'done'],
];

/** Facts of up to 60 days before a first morning; goods due up to 30 days after it. */
const someFacts = fc.array(fc.record({ kind: fc.constantFrom(...factKinds), at: fc.integer({ min: -60, max: 30 }) }), {
  maxLength: 5,
});

function factsOn(day: string, some: readonly { kind: (typeof factKinds)[number]; at: number }[]): readonly StepFact[] {
  return some.map(({ kind: [step, what], at }) => ({
    step,
    what,
    on: dayAt(day, what === 'due' ? at : -Math.abs(at)),
  }));
}

interface Case {
  readonly facts: PlanFacts;
  readonly wish: PlanWish;
}

/** An order with something behind it, on a morning. */
const anyCase: fc.Arbitrary<Case> = fc
  .record({
    facts: anyFacts,
    on: anyDay,
    calendar: anyCalendar,
    some: someFacts,
    away: fc.integer({ min: -40, max: 150 }),
    paid: fc.option(fc.integer({ min: -60, max: 20 }), { nil: undefined }),
  })
  .map(({ facts, on, calendar, some, away, paid }) => ({
    facts: withFacts(facts, factsOn(on, some)),
    wish: {
      on,
      calendar,
      handover: dayAt(on, away),
      ...(paid !== undefined && { deposit: dayAt(on, paid) }),
    },
  }));

describe('the plan of a morning', () => {
  test('no open step lies before the later of today and the deposit, nor on a closed day', () => {
    fc.assert(
      fc.property(anyCase, ({ facts, wish }) => {
        const { on, deposit = on, calendar } = wish;
        const start = firstOpenFrom(on < deposit ? deposit : on, calendar);
        const open = planned(facts, wish).steps.filter(({ state }) => state === 'open');
        const days = open.flatMap(({ date, orderBy = date }) => [date, orderBy]);
        expect(days.filter((day) => day < start || !isOpen(day, calendar))).toEqual([]);
      }),
      RUNS,
    );
  });

  test('a plan of a closed day is that of the next open day', () => {
    fc.assert(
      fc.property(anyFacts, anyDay, anyCalendar, (facts, day, calendar) => {
        const handover = dayAt(day, 90);
        const next = firstOpenFrom(day, calendar);
        expect(planned(facts, { on: day, calendar, handover })).toEqual(
          planned(facts, { on: next, calendar, handover }),
        );
      }),
      RUNS,
    );
  });

  test('while nothing happens, no morning makes it less late', () => {
    fc.assert(
      fc.property(anyCase, fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 8 }), ({ facts, wish }, gaps) => {
        let { on } = wish;
        const late = [planned(facts, wish).late];
        for (const gap of gaps) {
          on = dayAt(on, gap);
          late.push(planned(facts, { ...wish, on }).late);
        }
        expect(late).toEqual(late.toSorted((one, other) => one - other));
      }),
      RUNS,
    );
  });

  test('what happens on the day it is forecast for changes nothing, and earlier makes nothing later', () => {
    fc.assert(
      fc.property(anyCase, fc.nat(), fc.integer({ min: 0, max: 20 }), ({ facts, wish }, which, early) => {
        const before = planned(facts, wish);
        const { step, date, state } = before.steps[which % before.steps.length] ?? {
          step: 'build',
          date: '',
          state: '',
        };
        if (state !== 'open' && state !== 'ordered') return;
        const what = goodsSteps.some((each) => each === step) && step !== 'leaves' ? 'in' : factOf(step);
        const forecast = ({ build, handover, late }: PrepPlan) => ({ build, handover, late });
        const after = (day: string) => planned(withFacts(facts, [{ step, what, on: day }]), wish);
        expect(forecast(after(date))).toEqual(forecast(before));
        expect(after(dayAt(date, -early)).late).toBeLessThanOrEqual(before.late);
      }),
      { numRuns: 300 },
    );
  });

  test('late goods that decide, come today, bring the build nearer, or another chain is as late', () => {
    fc.assert(
      fc.property(anyCase, ({ facts, wish }) => {
        const plan = planned(facts, wish);
        const step = goodsSteps.find((each) => each === plan.decides.first);
        if (plan.late === 0 || plan.decides.is !== 'to order' || !step || arrivesToday(facts, step)) return;
        const came = planned(withFacts(facts, [{ step, what: 'in', on: wish.on }]), wish);
        const isSame = came.decides.first === step && came.decides.is === 'to order';
        expect(came.build < plan.build || (came.build === plan.build && !isSame)).toBe(true);
      }),
      { numRuns: 300 },
    );
  });
});

function factOf(step: StepFact['step']): FactWhat {
  return step === 'springtails' ? 'started' : 'done';
}

/** Goods without a lead come on the day they are ordered: that they came today is their forecast. */
function arrivesToday({ goods }: PlanFacts, step: GoodsStep): boolean {
  return goods[step].some(({ leadDays }) => leadDays === 0);
}
