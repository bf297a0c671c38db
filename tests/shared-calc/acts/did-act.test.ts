import { describe, expect, test } from 'vitest';
import { did } from '#shared-calc/acts/did-act.ts';
import { derive } from '#shared-calc/derive/derived.ts';
import type { Records } from '#shared-calc/records/records.ts';
import { faultJson } from '#shared-calc/words/say-act-fault.ts';
import { DEMO_DAY } from '#tests/demo-bench.ts';
import { faultOf, jobOf, libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { done, refused } from './do-act.ts';

function paidJob(): Records {
  return done(libraryJob(), 'recordDeposit', { job: 'J02', coins: 65_000, on: DEMO_DAY }).records;
}

const panelOver = { job: 'J02', step: 'panel', minutes: 90, name: 'Mara', ends: true };

function stepsOf(records: Records): Readonly<Record<string, string | undefined>> {
  const plan = derive(records, DEMO_DAY).job('J02')?.plan();
  if (!plan?.ok) throw new Error('no plan');
  return Object.fromEntries(plan.value.plan.steps.map(({ step, state, on }) => [step, on ? `${state} ${on}` : state]));
}

describe('did', () => {
  test('a step that is over stands on its day in the plan, with who and how long, and at what an hour cost', () => {
    const { records, label } = done(paidJob(), 'did', panelOver);
    const [entry] = records.done.values();
    expect(label).toBe('J02: panel done');
    expect({ ...entry, id: '' }).toEqual({
      id: '',
      step: 'panel',
      job: 'J02',
      on: DEMO_DAY,
      who: 'R-builder',
      name: 'Mara',
      minutes: 90,
      rateCoins: 3200,
      ends: true,
      against: [],
      note: '',
    });
    expect(stepsOf(paidJob())['panel']).toBe('open');
    expect(stepsOf(records)['panel']).toBe(`done ${DEMO_DAY}`);
  });

  test('minutes at a step do not end it; leaves and springtails are the grower’s hour', () => {
    const { records } = done(paidJob(), 'did', { job: 'J02', step: 'leaves', minutes: 20 });
    expect([...records.done.values()].map(({ who, ends, rateCoins }) => [who, ends, rateCoins])).toEqual([
      ['R-grower', false, 2400],
    ]);
    expect(stepsOf(records)['leaves']).toBe('open');
  });

  test('a task of the recipe, a tub that was fed and an order that was unpacked are told as well', () => {
    const { records } = done(paidJob(), 'did', { job: 'J02', step: 'L11', minutes: 45 });
    expect([...records.done.values()].map(({ step }) => step)).toEqual(['L11']);
    const tub = done(records, 'startTub', { kind: 'C1' }).records;
    expect(done(tub, 'did', { tub: 'K1', step: 'feed' }).label).toBe('K1: feed worked on');
  });

  test('built although goods are not in: refused, and with a reason the job is built, in one change', () => {
    const fault = faultOf(did.run(derive(paidJob(), DEMO_DAY), { job: 'J02', step: 'build', ends: true }));
    expect(fault && faultJson(fault)).toMatchObject({ kind: 'stands-against' });
    const input = { job: 'J02', step: 'build', ends: true, anyway: 'All was in the van' };
    const { records } = done(paidJob(), 'did', input);
    expect(jobOf(records, 'J02').state).toBe('built');
    expect(stepsOf(records)['build']).toBe(`done ${DEMO_DAY}`);
  });

  test('no fact moves a job back', () => {
    const built = done(paidJob(), 'did', { job: 'J02', step: 'build', ends: true, anyway: 'In the van' }).records;
    const late = done(built, 'did', { ...panelOver, on: '2027-03-01' }).records;
    expect(jobOf(late, 'J02').state).toBe('built');
  });

  test('an unpaid job is not moved by what was done for it', () => {
    const { records } = done(libraryJob(), 'did', { job: 'J02', step: 'build', ends: true });
    expect(jobOf(records, 'J02').state).toBe('enquiry');
  });

  test.each([
    [{ step: 'panel' }, 'Say what it was done for: a job, a tub or an order.'],
    [
      { job: 'J02', step: 'pannel' },
      'No step called pannel. Did you mean panel? Steps: panel, looks, cleared, springtails, blend, leaves, build, watch, handover, or a task of the recipe such as L11.',
    ],
    [{ job: 'J02', step: 'panel', who: 'R-bulder' }, 'There is no rate R-bulder. Did you mean R-builder?'],
  ])('%j: %s', (input, says) => {
    expect(refused(paidJob(), 'did', input)).toBe(says);
  });
});
