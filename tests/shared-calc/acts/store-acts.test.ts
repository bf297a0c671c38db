import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stockOnHand } from '#shared-calc/buy/stock.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { libraryJob, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { done, refused } from './do-act.ts';

const on = DEMO_DAY;
const note = '';

function entryOf(records: Records, id: string): StockEntry {
  const entry = records.stockEntry.get(id);
  if (!entry) throw new Error(`no entry ${id}`);
  return entry;
}

describe('putIn', () => {
  test('what is put in is another entry beside what lies there', () => {
    const { label, records } = done(demoRecords(), 'putIn', { material: 'M01', amount: 45, sealed: true, note });
    expect([
      label,
      entryOf(records, 'K-M01-2').amount,
      stockOnHand(records.stockEntry.values(), { on }).get('M01'),
    ]).toEqual(['45.00\u00a0L of M01 into the Store', 45, 52]);
  });

  test('it is no day and no material out of the air', () => {
    const one = { material: 'M01', amount: 1, sealed: true, note };
    expect(refused(demoRecords(), 'putIn', { ...one, bestBefore: '2027-02-30' })).toBe(
      'There is no 2027-02-30 in the calendar.',
    );
    expect(refused(demoRecords(), 'putIn', { ...one, material: 'M99' })).toContain('names M99 as its material');
  });
});

describe('correctEntry', () => {
  test('a day or a job that is taken away is gone from the entry', () => {
    const records = withRecords(demoRecords(), 'stockEntry', [
      { id: 'K9', material: 'M26', amount: 100, sealed: true, reservedFor: 'J01', bestBefore: '2027-09-01', note },
    ]);
    const then = done(records, 'correctEntry', { entry: 'K9', fields: { reservedFor: null, bestBefore: null } });
    expect([then.label, entryOf(then.records, 'K9')]).toEqual([
      'M26 in the Store',
      { id: 'K9', material: 'M26', amount: 100, sealed: true, note },
    ]);
  });
});

describe('writeOff', () => {
  test('a whole entry goes', () => {
    const { label, records } = done(demoRecords(), 'writeOff', { entry: 'K-M05' });
    expect([label, records.stockEntry.has('K-M05')]).toEqual(['M05 out of the Store', false]);
  });
});

describe('useStock', () => {
  test('what is used comes out of the opened bag first, and a bag that is begun is opened', () => {
    const records = withRecords(demoRecords(), 'stockEntry', [
      { id: 'K-M01-2', material: 'M01', amount: 10, sealed: true, note },
    ]);
    const then = done(records, 'useStock', { material: 'M01', amount: 9 });
    expect([then.label, then.records.stockEntry.has('K-M01'), entryOf(then.records, 'K-M01-2')]).toEqual([
      '9.00\u00a0L of M01 used',
      false,
      { id: 'K-M01-2', material: 'M01', amount: 8, sealed: false, note },
    ]);
  });

  test('more than there is is refused with what there is', () => {
    expect(refused(demoRecords(), 'useStock', { material: 'M01', amount: 8 })).toBe(
      'The Store has 7.00\u00a0L of M01 to give, not 8.00\u00a0L of M01. What is kept for others stays: measure again, or give back what is kept.',
    );
  });

  test('what is kept for another job is not given', () => {
    const next = done(libraryJob(), 'keepNeeded', { job: 'J02' }).records;
    expect(refused(next, 'useStock', { material: 'M01', amount: 1, job: 'J01' })).toContain('to give');
    expect(refused(next, 'useStock', { material: 'M01', amount: 1, job: 'J02' })).toBe('');
  });

  test('the Store has less by exactly what was used, whatever that was', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 7, noNaN: true }), (amount) => {
        const then = done(demoRecords(), 'useStock', { material: 'M01', amount }).records;
        expect(stockOnHand(then.stockEntry.values(), { on }).get('M01') ?? 0).toBeCloseTo(7 - amount, 6);
      }),
      { numRuns: 40 },
    );
  });
});

describe('reserve, release and keepNeeded', () => {
  test('a job is kept what it needs of what is free, and no more', () => {
    const next = done(libraryJob(), 'keepNeeded', { job: 'J02' }).records;
    const reserved = [...next.stockEntry.values()].filter(({ reservedFor }) => reservedFor === 'J02');
    const amounts = new Map(reserved.map(({ material, amount }) => [material, Number(amount.toFixed(3))]));
    expect([amounts.get('M01'), amounts.get('M24'), amounts.has('M30')]).toEqual([7, 1, false]);
    expect(refused(next, 'keepNeeded', { job: 'J02' })).toBe('The Store has nothing free that J02 still needs.');
  });

  test('reserved litres are never kept for two jobs', () => {
    const first = done(libraryJob(), 'keepNeeded', { job: 'J02' }).records;
    const both =
      refused(first, 'keepNeeded', { job: 'J01' }) === '' ? done(first, 'keepNeeded', { job: 'J01' }).records : first;
    const total = [...both.stockEntry.values()]
      .filter(({ material }) => material === 'M01')
      .reduce((sum, { amount }) => sum + amount, 0);
    expect(total).toBeCloseTo(7, 9);
  });

  test('an amount is kept by hand, and all of it given back', () => {
    const reserved = done(libraryJob(), 'reserve', { job: 'J02', material: 'M01', amount: 3 });
    const back = done(reserved.records, 'release', { job: 'J02' });
    expect([reserved.label, back.label, back.records.stockEntry.size]).toEqual([
      '3 L of M01 kept for J02',
      'nothing kept for J02 any more',
      reserved.records.stockEntry.size,
    ]);
    expect(refused(libraryJob(), 'reserve', { job: 'J02', material: 'M01', amount: 30 })).toBe(
      'The Store cannot keep 30 L of M01: 7 L are free.',
    );
  });
});

describe('receive', () => {
  test('packs that came lie in the Store, plants in quarantine', () => {
    const packs = [
      { material: 'PG', amount: 1, count: 4 },
      { material: 'M01', amount: 10, count: 2 },
      { material: 'M05', amount: 5, count: 0 },
    ];
    const { label, records } = done(libraryJob(), 'receive', { supplier: 'S-marlvale', packs, quarantineDays: 30 });
    const came = [...records.stockEntry.values()].filter(({ note: of }) => of.includes('Marlvale'));
    expect([
      label,
      came.map(({ material, amount, quarantineUntil = '' }) => [material, amount, quarantineUntil]),
    ]).toEqual([
      'order of Marlvale Plant House in',
      [
        ['PG', 4, '2027-04-07'],
        ['M01', 20, ''],
      ],
    ]);
  });

  test('an order of which nothing came is not received', () => {
    const packs = [{ material: 'M01', amount: 10, count: 0 }];
    expect(refused(libraryJob(), 'receive', { supplier: 'S-hollin', packs, quarantineDays: 30 })).toBe(
      'Nothing came: count at least one pack.',
    );
  });
});
