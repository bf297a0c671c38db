import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { careDates, careRounds, drainEvery, lampDue } from '#shared-calc/prepare/care-calendar.ts';
import { drainFillDays } from '#shared-calc/trade/water/drain-fill-days.ts';
import { mistDaily } from '#shared-calc/trade/water/mist-daily.ts';
import { mondayToFriday } from './demo-plan.ts';

describe('careDates', () => {
  test('a date that is closed moves to the next open day: the worked check of 17 September 2027', () => {
    expect(careDates('2027-09-17', mondayToFriday).map(({ date }) => date)).toEqual([
      '2027-09-24',
      '2027-10-15',
      '2027-12-17',
      '2028-03-17',
      '2028-06-16',
      '2028-09-18',
    ]);
  });
});

describe('drainEvery', () => {
  test.each([
    [46.4, 42],
    [55.9, 49],
    [14, 14],
    [20.9, 14],
    [13.9, 13],
    [1.2, 1],
    [0.4, 1],
  ])('%d days to fill: drain every %d days', (days, every) => {
    expect(drainEvery(days)).toBe(every);
  });
});

describe('the drain interval', () => {
  const figure = (min: number, max: number) => fc.double({ min, max, noNaN: true });

  test('more mist never lengthens it, and a drier room never shortens it', () => {
    fc.assert(
      fc.property(
        fc.record({ nozzles: fc.integer({ min: 1, max: 4 }), seconds: figure(1, 60), cycles: figure(1, 12) }),
        fc.record({ seconds: figure(0, 30), cycles: figure(0, 6), lost: figure(0, 200) }),
        figure(0.1, 30),
        (mist, more, room) => {
          const every = (seconds: number, cycles: number, lost: number) => {
            const misted = Number(mistDaily.compute([mist.nozzles, 90, 550, 550, seconds, cycles]));
            return drainEvery(Number(drainFillDays.compute([room, misted, lost])));
          };
          const now = every(mist.seconds, mist.cycles, 50);
          expect(every(mist.seconds + more.seconds, mist.cycles + more.cycles, 50)).toBeLessThanOrEqual(now);
          expect(every(mist.seconds, mist.cycles, 50 + more.lost)).toBeGreaterThanOrEqual(now);
        },
      ),
    );
  });
});

describe('careRounds', () => {
  test('T07 Full in summer fills in 46.4 days: drain every 6 weeks, refill and clean every 14 days', () => {
    expect(careRounds('2027-04-28', { drainDays: 46.4, refillDays: 14 })).toEqual([
      { act: 'drain', everyDays: 42, says: 'every 6 weeks', first: '2027-06-09' },
      { act: 'refill and clean', everyDays: 14, says: 'every 14 days', first: '2027-05-12' },
    ]);
  });

  test('leaves that may be thin after 77 days are looked at then, and topped up as they are likely to thin', () => {
    expect(careRounds('2027-04-28', { litterDays: 171.14, litterSoonest: 77 })).toEqual([
      { act: 'look at the leaves', everyDays: 77, once: true, says: 'once after 11 weeks', first: '2027-07-14' },
      { act: 'top up leaves', everyDays: 168, says: 'every 24 weeks', first: '2027-10-13' },
    ]);
  });

  test('where their decay was measured they are topped up only, and thin ones every week', () => {
    expect(careRounds('2027-04-28', { litterDays: 171.14, litterSoonest: 171.14 }).map(({ act }) => act)).toEqual([
      'top up leaves',
    ]);
    expect(careRounds('2027-04-28', { litterDays: 0 })).toEqual([
      { act: 'top up leaves', everyDays: 7, says: 'every week', first: '2027-05-05' },
    ]);
  });

  test('a tank that never fills is not drained', () => {
    expect(careRounds('2027-04-28', { drainDays: 3650 })).toEqual([]);
  });
});

describe('lampDue', () => {
  test('the lamps are due between the third year and the fourth', () => {
    expect(lampDue('2027-04-28', mondayToFriday)).toEqual({ from: '2030-04-29', to: '2031-04-28' });
  });
});
