import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '#shared-calc/calendar/day.ts';
import { culturesToKeep, type CultureDemand, type CultureTerms } from '#shared-calc/trade/cultures/cultures-to-keep.ts';

const springtails: CultureTerms = { yield: 3000, refillDays: 14, matureDays: 28, spareShare: 0.2 };
const summer: readonly CultureDemand[] = [
  { date: '2027-06-28', animals: 2130 },
  { date: '2027-07-05', animals: 1581 },
  { date: '2027-07-19', animals: 1914 },
];
const season = fc.array(
  fc.record({
    date: fc.integer({ min: 0, max: 200 }).map((days) => addDays('2027-03-01', days)),
    animals: fc.integer({ min: 0, max: 9000 }),
  }),
  { maxLength: 15 },
);

describe('culturesToKeep', () => {
  test('three builds in summer: 2 tubs and 1 spare, started by 31 May', () => {
    expect(culturesToKeep(summer, springtails)).toEqual({
      tubs: 2,
      spare: 1,
      startBy: '2027-05-31',
      tubStarts: ['2027-05-31', '2027-06-07'],
      harvests: [
        { date: '2027-06-28', tub: 1 },
        { date: '2027-07-05', tub: 2 },
        { date: '2027-07-19', tub: 1 },
      ],
    });
  });

  test('the order in which demands are written does not matter', () => {
    expect(culturesToKeep(summer.toReversed(), springtails)).toEqual(culturesToKeep(summer, springtails));
  });

  test('a demand over one yield takes several tubs, and what is over is not kept', () => {
    const big = [
      { date: '2027-06-28', animals: 7000 },
      { date: '2027-06-29', animals: 1 },
    ];
    expect(culturesToKeep(big, springtails)).toMatchObject({ tubs: 4, spare: 1, startBy: '2027-05-31' });
  });

  test('a tub gives again on the very day it is refilled', () => {
    const fortnight = ['2027-06-28', '2027-07-12'].map((date) => ({ date, animals: 3000 }));
    expect(culturesToKeep(fortnight, springtails)).toMatchObject({ tubs: 1, spare: 1 });
  });

  test('nothing wanted keeps no tub', () => {
    const none = { tubs: 0, spare: 0, tubStarts: [], harvests: [] };
    expect(culturesToKeep([], springtails)).toEqual(none);
    expect(culturesToKeep([{ date: '2027-06-28', animals: 0 }], springtails)).toEqual(none);
  });

  test.each<{ as: string; demands?: readonly CultureDemand[]; terms?: Partial<CultureTerms>; says: string }>([
    { as: 'a tub that gives none', terms: { yield: 0 }, says: "A tub's yield must be more than zero." },
    { as: 'days below zero', terms: { refillDays: -1 }, says: 'Days to refill cannot be below zero.' },
    { as: 'half days', terms: { matureDays: 27.5 }, says: 'Days of a culture are whole days.' },
    {
      as: '20 typed for 20 %',
      terms: { spareShare: 20 },
      says: 'The spare share is a share from 0 to 1; you gave 20.',
    },
    {
      as: 'a day that is none',
      demands: [{ date: '2027-02-30', animals: 1 }],
      says: '2027-02-30 is no day; write it as 2027-06-28.',
    },
    {
      as: 'a demand below zero',
      demands: [{ date: '2027-06-28', animals: -1 }],
      says: 'A demand cannot be below zero.',
    },
    {
      as: 'more than a workshop can keep',
      demands: [{ date: '2027-06-28', animals: 6e6 }],
      says: 'That takes 2000 harvests; 1000 is the limit here.',
    },
  ])('refuses $as', ({ demands, terms, says }) => {
    expect(culturesToKeep(demands ?? summer, { ...springtails, ...terms })).toEqual({ refused: says });
  });

  test('every demand is covered, and no tub is harvested before it is full again', () => {
    fc.assert(
      fc.property(season, (demands) => {
        const plan = culturesToKeep(demands, springtails);
        const harvests = 'refused' in plan ? [] : plan.harvests;
        for (const { date } of demands) {
          const wanted = demands
            .filter((each) => each.date === date)
            .reduce((sum, each) => sum + Math.ceil(each.animals / 3000), 0);
          expect(harvests.filter((each) => each.date === date)).toHaveLength(wanted);
        }
        for (const [at, later] of harvests.entries()) {
          const sooner = harvests.slice(0, at).findLast((each) => each.tub === later.tub);
          expect(sooner === undefined || addDays(sooner.date, 14) <= later.date).toBe(true);
        }
      }),
    );
  });
});
