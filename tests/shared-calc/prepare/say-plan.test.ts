import { describe, expect, test } from 'vitest';
import { sayPlan } from '#shared-calc/prepare/say-plan.ts';
import { sayDate, sayDay, sayPlainDate } from '#shared-calc/prepare/say-day.ts';
import { demoPlan, mondayToFriday } from './demo-plan.ts';

const wish = { handover: '2027-04-28', calendar: mondayToFriday };

describe('sayDay', () => {
  test.each([
    ['2027-02-26', 'Friday 26 February', 'Friday, February 26'],
    ['2028-02-29', 'Tuesday 29 February', 'Tuesday, February 29'],
    ['2027-08-01', 'Sunday 1 August', 'Sunday, August 1'],
  ])('%s is %s, and %s where the month comes first', (day, said, monthFirst) => {
    expect([sayDay(day, {}), sayDay(day, { dateOrder: 'dmy' }), sayDay(day, { dateOrder: 'mdy' })]).toEqual([
      said,
      said,
      monthFirst,
    ]);
  });
});

describe('sayDate', () => {
  test('a year stands behind the day, and on a label the weekday is left out', () => {
    expect([sayDate('2027-02-26', {}), sayPlainDate('2027-02-26', {})]).toEqual([
      'Friday 26 February 2027',
      '26 February 2027',
    ]);
  });
});

describe('sayPlan', () => {
  test("a client's tank is said to come from the client, and by when", () => {
    const plan = demoPlan({ job: { client_tank: 'yes' } }, wish);
    expect(sayPlan(plan, { what: 'the library', days: {} })).toEqual([
      'Order plants by Friday 26 February or the library opens late.',
      'The tank comes from the client: it must be here by Tuesday 30 March.',
    ]);
  });

  test('what decides without plants: springtails are started, not ordered', () => {
    const order = { job: { plant_quarantine: '0 d' } };
    expect(sayPlan(demoPlan(order, wish), { what: 'the library', days: {} })).toEqual([
      'Start the springtails by Wednesday 10 March or the library opens late.',
    ]);
  });

  test('a deposit of long ago does not order by itself: what is open is ordered from today, and the handover moves', () => {
    const plan = demoPlan({}, { ...wish, deposit: '2027-02-15', on: '2027-03-17' });
    expect([plan.late, sayPlan(plan, { what: 'the library', days: {} })]).toEqual([
      15,
      [
        '15 days late because of plant quarantine: the handover moves from Wednesday 28 April to Thursday 13 May.',
        'Order plants by Wednesday 17 March or the library opens later still.',
      ],
    ]);
  });

  test('a handover that moves into another year is told with both years', () => {
    const plan = demoPlan({}, { handover: '2026-12-30', calendar: mondayToFriday });
    expect(sayPlan(plan, { what: 'the library', days: {} })[0]).toMatch(
      /the handover moves from Wednesday 30 December 2026 to \w+ \d+ January 2027\.$/,
    );
  });

  test('a late plan says how late and why first', () => {
    const plan = demoPlan({}, { ...wish, on: '2027-03-01' });
    expect(sayPlan(plan, { what: 'the library', days: {} })).toEqual([
      '1 day late because of plant quarantine: the handover moves from Wednesday 28 April to Thursday 29 April.',
      'Order plants by Wednesday 3 March or the library opens later still.',
    ]);
  });
});
