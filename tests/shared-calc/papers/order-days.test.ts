import { describe, expect, test } from 'vitest';
import { orderBy } from '#shared-calc/papers/order-days.ts';

const planned = [
  {
    job: 'J02',
    plan: {
      steps: [
        { step: 'tank' as const, state: 'open' as const, date: '2027-03-30', orderBy: '2027-03-16' },
        { step: 'plants' as const, state: 'open' as const, date: '2027-03-04', orderBy: '2027-02-26' },
        { step: 'build' as const, state: 'open' as const, date: '2027-04-07' },
        { step: 'hardscape' as const, state: 'open' as const, date: '2027-03-30', orderBy: '2027-03-23' },
      ],
    },
  },
  {
    job: 'J03',
    plan: { steps: [{ step: 'tank' as const, state: 'open' as const, date: '2027-03-25', orderBy: '2027-03-11' }] },
  },
];

describe('orderBy', () => {
  test.each([
    ['plants', { day: '2027-02-26', job: 'J02' }],
    ['tank', { day: '2027-03-11', job: 'J03' }],
    ['hardscape', { day: '2027-03-23', job: 'J02' }],
    ['media', undefined],
  ])('%s: the earliest last day over the jobs', (group, day) => {
    expect(orderBy([group], planned)).toEqual(day);
  });

  test('an order of nothing that waits asks for no day', () => {
    expect(orderBy([], planned)).toBeUndefined();
  });
});
