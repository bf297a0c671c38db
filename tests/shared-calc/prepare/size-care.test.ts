import { describe, expect, test } from 'vitest';
import { careByArea, sizeCare, soonestRounds } from '#shared-calc/prepare/size-care.ts';
import { careDates } from '#shared-calc/prepare/care-calendar.ts';
import { plainDisplay } from '#shared-calc/quantity/shown-unit.ts';
import { demoBench } from '#tests/demo-bench.ts';
import { mondayToFriday } from '#tests/shared-calc/prepare/demo-plan.ts';
import { records } from '#tests/shared-calc/papers/all-cards.ts';

/** 30 mm of leaves may be thin after 77 days, and are likely to be after 171. */
const leaves = [
  { act: 'look at the leaves', everyDays: 77, once: true, says: 'once after 11 weeks', first: '2027-07-14' },
  { act: 'top up leaves', everyDays: 168, says: 'every 24 weeks', first: '2027-10-13' },
];

describe('sizeCare', () => {
  test('T07 Full, screen under its lamps: drained every 6 weeks, its can cleaned every 14 days', () => {
    // Scenario 9.
    const measured = {
      soil_rise: '0 mm',
      screen_under_lamps: 'yes',
      air_changes: '1 each/h',
      tank_air: '24 degC',
      tank_air_summer: '24 degC',
      tank_humidity: '90 %',
      tank_humidity_summer: '90 %',
    };
    const bench = demoBench({ sizes: ['T07'], job: measured }, records);
    const [care] = sizeCare(bench, '2027-04-28', plainDisplay);
    bench.close();
    expect(care?.rounds).toEqual([
      { act: 'drain', everyDays: 42, says: 'every 6 weeks', first: '2027-06-09' },
      { act: 'refill and clean', everyDays: 14, says: 'every 14 days', first: '2027-05-12' },
      ...leaves,
    ]);
  });

  test('with nothing measured it is drained by the soonest that it may be full: 46.7 of 67 days', () => {
    const bench = demoBench({ sizes: ['T07'] }, records);
    const [care] = sizeCare(bench, '2027-04-28', plainDisplay);
    bench.close();
    expect(care?.rounds[0]).toMatchObject({ act: 'drain', everyDays: 42, says: 'every 6 weeks' });
  });

  test('Basic has no can and nothing that collects: nothing to refill or to drain, but leaves to look after', () => {
    const bench = demoBench({ sizes: ['T07'], job: { kit: 'basic' } }, records);
    const [care] = sizeCare(bench, '2027-04-28', plainDisplay);
    bench.close();
    expect(care?.rounds).toEqual(leaves);
  });
});

describe('soonestRounds', () => {
  test('of several tanks the one that fills first rules', () => {
    const drain = (everyDays: number) => ({
      act: 'drain' as const,
      everyDays,
      says: `every ${everyDays} days`,
      first: '2027-05-01',
    });
    expect(soonestRounds([{ rounds: [drain(42)] }, { rounds: [drain(28)] }, { rounds: [] }])).toEqual([drain(28)]);
  });
});

describe('careByArea', () => {
  const cared = (id: string, area: string, handover: string) => ({
    job: { id, title: `Tank ${id}`, area, client: '' },
    care: careDates(handover, mondayToFriday),
  });

  test('visits of one area in one week are one trip; a call is not driven to', () => {
    // J02's visit is 28 d after 28 Apr, Wed 26 May; J03's call is 7 d after 17 May, Mon 24 May: the same week.
    const [hill, riverside] = careByArea(
      [
        cared('J02', 'Riverside', '2027-04-28'),
        cared('J03', ' riverside', '2027-05-17'),
        cared('J04', 'Hill', '2027-04-28'),
      ],
      '2027-05-20',
    );
    expect([hill?.area, riverside?.area, riverside?.trips.slice(0, 2)]).toEqual([
      'Hill',
      'Riverside',
      [
        {
          week: '2027-05-24',
          visits: [{ act: 'visit', date: '2027-05-26', job: 'J02', title: 'Tank J02' }],
          calls: [{ act: 'call', date: '2027-05-24', job: 'J03', title: 'Tank J03' }],
        },
        {
          week: '2027-06-14',
          visits: [{ act: 'visit', date: '2027-06-14', job: 'J03', title: 'Tank J03' }],
          calls: [],
        },
      ],
    ]);
  });

  test('what is over is not driven again', () => {
    expect(careByArea([cared('J02', 'Riverside', '2027-04-28')], '2028-04-28')).toEqual([]);
  });
});
