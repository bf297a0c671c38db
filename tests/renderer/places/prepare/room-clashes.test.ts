import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roomClashes, standingTanks, type StandingTanks } from '#renderer/places/prepare/room-clashes.ts';
import { addDays } from '#shared-calc/calendar/day.ts';

const library: StandingTanks = { job: 'J02', tanks: 1, from: '2027-04-07', to: '2027-05-05' };
const school: StandingTanks = { job: 'J03', tanks: 3, from: '2027-04-20', to: '2027-04-30' };

describe('roomClashes', () => {
  test('four tanks at once are one too many for three places, while they stand together', () => {
    expect(roomClashes([library, school], 3)).toEqual([
      { from: '2027-04-20', to: '2027-04-30', tanks: 4, jobs: ['J02', 'J03'] },
    ]);
  });

  test('with four places there is room', () => {
    expect(roomClashes([library, school], 4)).toEqual([]);
  });

  test('stretches that follow one another are one, with the most of them', () => {
    const hall: StandingTanks = { job: 'J04', tanks: 3, from: '2027-05-01', to: '2027-05-10' };
    expect(roomClashes([library, school, hall], 2)).toEqual([
      { from: '2027-04-20', to: '2027-05-10', tanks: 4, jobs: ['J02', 'J03', 'J04'] },
    ]);
  });

  test('day by day: a day is in a clash when more tanks stand on it than there are places', () => {
    const start = fc.integer({ min: 0, max: 40 });
    const tanks = fc.record({
      at: start,
      days: fc.integer({ min: 0, max: 20 }),
      tanks: fc.integer({ min: 1, max: 4 }),
    });
    fc.assert(
      fc.property(fc.array(tanks, { maxLength: 6 }), fc.integer({ min: 1, max: 6 }), (some, places) => {
        const standing = some.map((each, nth): StandingTanks => {
          const from = addDays('2027-03-01', each.at);
          return { job: `J${nth}`, tanks: each.tanks, from, to: addDays(from, each.days) };
        });
        const clashes = roomClashes(standing, places);
        for (let at = 0; at < 65; at += 1) {
          const day = addDays('2027-03-01', at);
          const here = standing
            .filter(({ from, to }) => from <= day && day <= to)
            .reduce((sum, each) => sum + each.tanks, 0);
          expect(clashes.some(({ from, to }) => from <= day && day <= to)).toBe(here > places);
        }
      }),
    );
  });
});

describe('standingTanks', () => {
  test('a tank stands here from the day it is in until the day before the handover', () => {
    const plan = {
      steps: [{ step: 'tank', state: 'open', date: '2027-03-30' } as const],
      build: '2027-04-07',
      handover: '2027-04-28',
    };
    expect(standingTanks('J02', 1, plan)).toEqual({ job: 'J02', tanks: 1, from: '2027-03-30', to: '2027-04-27' });
  });
});
