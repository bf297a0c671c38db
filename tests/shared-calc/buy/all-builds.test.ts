import { describe, expect, test } from 'vitest';
import { allBuilds } from '#shared-calc/buy/all-builds.ts';

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
