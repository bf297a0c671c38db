import { describe, expect, test } from 'vitest';
import { planEntries } from '#shared-calc/papers/plan-calendar.ts';
import { prepRows } from '#shared-calc/papers/prep-card.ts';
import { careRounds, lampDue } from '#shared-calc/prepare/care-calendar.ts';
import { demoPlan, mondayToFriday } from '#tests/shared-calc/prepare/demo-plan.ts';

// Scenario 11: T05 Full, handover Wed 28 Apr 2027.
const plan = demoPlan({ sizes: ['T05'] }, { handover: '2027-04-28', calendar: mondayToFriday });

describe('planEntries', () => {
  const entries = planEntries(
    {
      job: 'J02',
      title: 'Reading room',
      plan,
      rounds: careRounds('2027-04-28', { drainDays: 46.4, refillDays: 14 }),
      lampsFrom: lampDue('2027-04-28', mondayToFriday).from,
    },
    'Withy Street Terrarium Workshop',
  );
  const dateOf = (what: string) => entries.find(({ uid }) => uid.startsWith(`j02-${what}@`))?.date;

  test('orders, arrivals, build, handover and visits stand on the days of the plan', () => {
    expect(
      ['plants-order', 'plants', 'tank-order', 'tank', 'panel', 'leaves', 'build', 'handover', 'care-1', 'care-6'].map(
        dateOf,
      ),
    ).toEqual([
      '2027-02-26',
      '2027-03-04',
      '2027-03-16',
      '2027-03-30',
      '2027-03-31',
      '2027-04-06',
      '2027-04-07',
      '2027-04-28',
      '2027-05-05',
      '2028-04-27',
    ]);
  });

  test('draining and refilling come again through the first year', () => {
    expect(entries.filter(({ again }) => again).map(({ title, date, again }) => [title, date, again])).toEqual([
      ['Drain, every 6 weeks: Reading room', '2027-06-09', { everyDays: 42, times: 8 }],
      ['Refill and clean, every 14 days: Reading room', '2027-05-12', { everyDays: 14, times: 26 }],
    ]);
  });

  test('no two entries share a name, and the same plan gives the same names again', () => {
    const names = entries.map(({ uid }) => uid);
    expect(new Set(names).size).toBe(names.length);
    expect(names[0]).toBe('j02-tank-order@withy-street-terrarium-workshop.loamwright');
  });
});

describe('prepRows', () => {
  const rows = prepRows(plan, {});

  test('every act stands in order of its day, the first the one that decides', () => {
    expect(rows.slice(0, 3).map(({ act, date, decides }) => [act, date, decides])).toEqual([
      ['Order plants', '2027-02-26', true],
      ['Plants in, to quarantine', '2027-03-04', false],
      ['Start the springtail tub', '2027-03-10', false],
    ]);
    expect(rows.map(({ date }) => date)).toEqual(rows.map(({ date }) => date).toSorted());
    expect(rows.filter(({ decides }) => decides).length).toBe(1);
  });

  test("a client's tank is not ordered: it is here", () => {
    const brought = prepRows(demoPlan({ sizes: ['T05'], job: { client_tank: 'yes' } }, { handover: '2027-04-28' }), {});
    expect(brought.filter(({ step }) => step === 'tank').map(({ act }) => act)).toEqual(["The client's tank is here"]);
  });
});
