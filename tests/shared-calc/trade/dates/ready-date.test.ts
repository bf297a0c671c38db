import { describe, expect, test } from 'vitest';
import { readyDate, type Chain } from '#shared-calc/trade/dates/ready-date.ts';

const weekdays = { openWeekdays: [1, 2, 3, 4, 5], closed: [] };
const summer = {
  ...weekdays,
  closed: [
    { from: '2027-08-02', to: '2027-08-06' },
    { from: '2027-08-30', to: '2027-08-30' },
  ],
};
const panel: Chain = {
  name: 'panel',
  steps: [
    { wait: 'workdays', count: 10 },
    { wait: 'workdays', count: 1 },
    { wait: 'days', count: 7 },
  ],
};
const plants: Chain = {
  name: 'plant quarantine',
  steps: [
    { wait: 'workdays', count: 4 },
    { wait: 'delivery', weekdays: [2, 3, 4] },
    { wait: 'days', count: 30 },
  ],
};
const cultures: Chain = { name: 'cultures', steps: [{ wait: 'days', count: 28 }] };

describe('readyDate', () => {
  // Counted by hand on the calendar.
  test('a deposit on 19 Jul 2027 is ready on 26 Aug, because of plant quarantine', () => {
    expect(readyDate('2027-07-19', [panel, plants, cultures], summer)).toEqual({
      date: '2027-08-26',
      decides: 'plant quarantine',
      chains: [
        { name: 'panel', steps: ['2027-08-09', '2027-08-10', '2027-08-17'], ready: '2027-08-17' },
        { name: 'plant quarantine', steps: ['2027-07-23', '2027-07-27', '2027-08-26'], ready: '2027-08-26' },
        { name: 'cultures', steps: ['2027-08-16'], ready: '2027-08-16' },
      ],
    });
  });

  test('a deposit on 8 Mar 2027 is cleared on 15 Apr; the tank alone would allow 30 Mar', () => {
    expect(readyDate('2027-03-08', [panel, plants], weekdays)).toEqual({
      date: '2027-04-15',
      decides: 'plant quarantine',
      chains: [
        { name: 'panel', steps: ['2027-03-22', '2027-03-23', '2027-03-30'], ready: '2027-03-30' },
        { name: 'plant quarantine', steps: ['2027-03-12', '2027-03-16', '2027-04-15'], ready: '2027-04-15' },
      ],
    });
  });

  test('where two are ready last, the first of them decides', () => {
    expect(readyDate('2027-07-19', [cultures, { ...cultures, name: 'tubs' }], weekdays)).toMatchObject({
      decides: 'cultures',
    });
  });

  test('a chain may end on the next open day', () => {
    const open: Chain = { name: 'build', steps: [{ wait: 'days', count: 5 }, { wait: 'open' }] };
    expect(readyDate('2027-07-19', [open], weekdays)).toMatchObject({ date: '2027-07-26' });
  });

  test.each<{ as: string; start?: string; chains: readonly Chain[]; says: string }>([
    {
      as: 'a start that is no day',
      start: 'Monday',
      chains: [panel],
      says: 'Monday is no day; write it as 2027-07-19.',
    },
    { as: 'nothing to wait for', chains: [], says: 'Nothing to wait for; give at least one chain.' },
    {
      as: 'a supplier that comes on closed days only',
      chains: [{ name: 'plants', steps: [{ wait: 'delivery', weekdays: [7] }] }],
      says: 'plants: no delivery day is a day that is open.',
    },
    {
      as: 'a wait below zero',
      chains: [{ name: 'cure', steps: [{ wait: 'days', count: -1 }] }],
      says: 'cure: A wait cannot be below zero.',
    },
    {
      as: 'half a day',
      chains: [{ name: 'tank', steps: [{ wait: 'workdays', count: 2.5 }] }],
      says: 'tank: A wait must be whole days; you gave 2.5.',
    },
  ])('refuses $as', ({ start, chains, says }) => {
    expect(readyDate(start ?? '2027-07-19', chains, weekdays)).toEqual({ refused: says });
  });
});
