import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allBuilds, pooledBuilds } from '#shared-calc/buy/all-builds.ts';

describe('allBuilds', () => {
  test('a size built twice needs twice', () => {
    const one = { line: 'drainage_need', amount: 16.837, perJob: false, column: 'T07', count: 2 };
    expect(allBuilds([one])).toEqual([{ ...one, amount: 33.674 }]);
  });

  test('what is worked once for a job counts once, from the column where it is largest, however many are built', () => {
    const survey = { line: 'delivery_need', perJob: true };
    const small = { ...survey, amount: 36, column: 'T03', count: 4 };
    const large = { ...survey, amount: 72, column: 'T08', count: 2 };
    expect(allBuilds([small, large, { ...large, column: 'T09' }])).toEqual([large]);
  });
});

describe('pooledBuilds', () => {
  const clay = { line: 'clay_need', perJob: false, amount: 0.1, column: 'T07' };

  test('like columns are one column of all their builds; others stay by themselves', () => {
    const second = { ...clay, column: 'T07#2', like: 'T07', count: 2 };
    const other = { ...clay, column: 'T07#3', count: 1 };
    expect(pooledBuilds([{ ...clay, count: 1 }, second, other])).toEqual([
      { ...clay, count: 3, amount: 0.1 * 3 },
      { ...other, amount: 0.1 },
    ]);
  });

  test('any split of the builds of one column comes to the same, to the last digit', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 6 }), (counts) => {
        const split = counts.map((count, at) =>
          at === 0 ? { ...clay, count } : { ...clay, column: `T07#${at + 1}`, like: 'T07', count },
        );
        const all = counts.reduce((sum, each) => sum + each, 0);
        expect(pooledBuilds(split)).toEqual(pooledBuilds([{ ...clay, count: all }]));
      }),
    );
  });
});
