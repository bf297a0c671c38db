import { describe, expect, test } from 'vitest';
import { calendarOf } from '#shared-calc/prepare/calendar-of.ts';
import { planFacts } from '#shared-calc/prepare/plan-facts.ts';
import { prepPlan } from '#shared-calc/prepare/prep-plan.ts';
import { sayPlanFault } from '#shared-calc/words/say-plan-fault.ts';
import { demoBench, demoRecords } from '#tests/demo-bench.ts';
import { demoFacts, fullStore } from './demo-plan.ts';

const records = demoRecords();
const anyDay = (leadDays: number) => ({ leadDays, weekdays: [] });

describe('planFacts', () => {
  test('T05 Full: tank 10, plants 4 on Tuesday to Thursday, media 3, panes 6, lamps 2, wood 5; sealant comes with the tank', () => {
    expect(demoFacts({}, records)).toEqual({
      settleIn: 21,
      panelCure: 7,
      plantQuarantine: 30,
      springtailDays: 28,
      panel: true,
      leaves: true,
      clientTank: false,
      goods: {
        tank: [anyDay(10)],
        plants: [{ leadDays: 4, weekdays: [2, 3, 4] }],
        media: [anyDay(3)],
        panes: [anyDay(6)],
        lamps: [anyDay(2)],
        hardscape: [anyDay(5)],
        leaves: [],
      },
    });
  });

  test('Basic has no background; a quarantine tank with paper has no media, no plants and no springtails', () => {
    expect(demoFacts({ job: { kit: 'basic' } }, records)).toMatchObject({ panel: false, panelCure: 0 });
    const { goods, plantQuarantine, springtailDays, settleIn, panel } = demoFacts(
      { recipe: 'H4', sizes: ['T03'], job: { damp_layer: 'paper' } },
      records,
    );
    expect([goods.media, goods.plants, plantQuarantine, springtailDays, settleIn, panel]).toEqual([
      [],
      [],
      0,
      undefined,
      0,
      false,
    ]);
  });

  test('of several sizes the longest wait counts, and a background in one is one for the job', () => {
    const bench = demoBench(
      { sizes: ['T03', 'T05'], locals: { T05: { settle_in: '28 d' }, T03: { panel_walls: '0' } } },
      records,
    );
    const facts = planFacts(bench, ['T03', 'T05'], { records, store: fullStore, on: '2026-11-25' });
    expect(facts).toMatchObject({ ok: true, value: { settleIn: 28, panel: true } });
  });

  test('a wait may be no day at all; one of part of a day takes the whole day', () => {
    const settleIn = (figure: string) => demoFacts({ job: { settle_in: figure } }, records).settleIn;
    expect([settleIn('0 d'), settleIn('1 h')]).toEqual([0, 1]);
  });

  test('a material with a lead of its own comes by that', () => {
    const clay = records.material.get('M04');
    const slow = new Map([...records.material, ...(clay ? [['M04', { ...clay, leadDays: 8 }] as const] : [])]);
    expect(demoFacts({}, { ...records, material: slow }).goods.media).toEqual([anyDay(3), anyDay(8)]);
  });

  test('own goods, as plants from the back room, are not ordered', () => {
    const own = [...records.material].map(
      ([id, each]) => [id, id.startsWith('P') ? { ...each, sale: 'own' as const } : each] as const,
    );
    const facts = demoFacts({}, { ...records, material: new Map(own) });
    expect([facts.goods.plants, facts.plantQuarantine]).toEqual([[], 0]);
  });

  test('a need that is not known yet counts as needed', () => {
    expect(demoFacts({ job: { dam_height: '' } }, records).goods.media).toEqual([anyDay(3)]);
  });

  test('a wait without a figure stops the plan and says which box', () => {
    const bench = demoBench({ sizes: ['T05'], job: { settle_in: '' } }, records);
    const facts = planFacts(bench, ['T05'], { records, store: fullStore, on: '2026-11-25' });
    expect(facts.ok ? facts : [facts.fault.kind, 'box' in facts.fault && facts.fault.box.line.name]).toEqual([
      'no-amount-yet',
      'settle_in',
    ]);
  });

  test('without the springtail kind in the culture book there is no date for springtails', () => {
    const bench = demoBench({ sizes: ['T05'] }, records);
    const facts = planFacts(bench, ['T05'], {
      records: { ...records, cultureKind: new Map() },
      store: fullStore,
      on: '2026-11-25',
    });
    expect(facts).toEqual({ ok: false, fault: { kind: 'no-culture', culture: 'C1' } });
    expect(sayPlanFault({ kind: 'no-culture', culture: 'C1' })).toBe(
      'No culture kind called C1 in the culture book: springtails have no date.',
    );
  });

  test('a wait of more than a hundred years is refused', () => {
    const bench = demoBench({ sizes: ['T05'], job: { plant_quarantine: '40000 d' } }, records);
    expect(planFacts(bench, ['T05'], { records, store: fullStore, on: '2026-11-25' })).toEqual({
      ok: false,
      fault: { kind: 'too-long', line: 'plant_quarantine', days: 40_000 },
    });
  });
});

describe('leaves from the year’s stock', () => {
  const leavesOf = (there: number) => {
    const bench = demoBench({ sizes: ['T05'] }, records);
    const store = { factOf: () => undefined, gives: () => there };
    const facts = planFacts(bench, ['T05'], { records, store, on: '2027-07-01' });
    if (!facts.ok) throw new Error(JSON.stringify(facts.fault));
    return facts.value;
  };
  const wish = { on: '2027-07-01', deposit: '2027-07-01', handover: '2027-09-01', calendar: calendarOf(records) };

  test('D7: without leaves in July the build waits for the first of October, and says for what', () => {
    const plan = prepPlan(leavesOf(0), wish);
    expect(plan).toMatchObject({
      value: { build: '2027-10-04', handover: '2027-10-25', late: 54, because: 'leaf season' },
    });
    expect(plan.ok && plan.value.steps.find(({ step }) => step === 'leaves')).toMatchObject({
      state: 'open',
      date: '2027-10-01',
    });
  });

  test('with enough of them they are only treated', () => {
    expect(leavesOf(500).goods.leaves).toEqual([]);
    expect(prepPlan(leavesOf(500), wish)).toMatchObject({ value: { build: '2027-08-11' } });
  });
});
