import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lotsOf, isOpened, stock } from '#shared-calc/buy/ledger.ts';
import type { Move, Records } from '#shared-calc/records/records.ts';
import { DEMO_DAY, demoRecords } from '#tests/demo-bench.ts';
import { keptFor, standsOf, usableFor, withBags } from '#tests/shared-calc/buy/lots.ts';
import { libraryJob } from '#tests/shared-calc/jobs/demo-jobs.ts';
import { done, refused } from './do-act.ts';

const on = DEMO_DAY;
const note = '';

/** The moves that an act has added, without what is the same for all. */
function added(before: Records, after: Records): readonly Partial<Move>[] {
  return [...after.move.values()]
    .filter(({ id }) => !before.move.has(id))
    .map(({ id, note: says, ...move }) => ({ ...move, ...(says !== '' && id !== '' && { note: says }) }));
}

describe('putIn', () => {
  test('what is put in is another lot beside what lies there', () => {
    const { label, records } = done(demoRecords(), 'putIn', { of: 'M01', amount: 45, sealed: true, note });
    expect([label, [...lotsOf(records, 'M01')].map(({ id }) => id), usableFor(records, 'M01', { on })]).toEqual([
      '45.00\u00a0L of M01 into the Store',
      ['K-M01', 'K-M01-2'],
      52,
    ]);
  });

  test('it is kept for a job from the start', () => {
    const input = { of: 'P04', amount: 6, sealed: true, note, job: 'J02', until: '2027-03-31' };
    const { label, records } = done(libraryJob(), 'putIn', input);
    const use = (day: string) => stock(records, 'PG', { asked: on, use: day }).kept.get('J02') ?? 0;
    expect([label, use('2027-03-30'), use('2027-03-31')]).toEqual(['6 of P04 into the Store, kept for J02', 0, 6]);
  });

  test('it is no day and no goods out of the air', () => {
    const one = { of: 'M01', amount: 1, sealed: true, note };
    expect(refused(demoRecords(), 'putIn', { ...one, bestBefore: '2027-02-30' })).toBe(
      'There is no 2027-02-30 in the calendar.',
    );
    expect(refused(demoRecords(), 'putIn', { ...one, of: 'M99' })).toContain('There is no material M99.');
  });
});

describe('correctLot', () => {
  test('a day that is taken away is gone from the lot, and nothing is moved', () => {
    const records = withBags(demoRecords(), [{ id: 'K9', of: 'M26', amount: 100, bestBefore: '2027-09-01' }]);
    const then = done(records, 'correctLot', { lot: 'K9', fields: { bestBefore: null, coins: 1250 } });
    const came = lotsOf(then.records, 'M26')[0]?.came;
    expect([then.label, came?.bestBefore, came?.coins, standsOf(then.records, 'M26', on)]).toEqual([
      'lot K9',
      undefined,
      1250,
      100,
    ]);
  });

  test('only what came in is a lot', () => {
    const used = done(demoRecords(), 'useStock', { of: 'M01', amount: 1, note }).records;
    expect(refused(used, 'correctLot', { lot: 'M-1', fields: { note: 'x' } })).toBe('There is no move M-1.');
  });
});

describe('useStock', () => {
  test('what is used comes out of the opened bag first, one move a lot, and a bag that is begun is opened', () => {
    const before = withBags(demoRecords(), [{ id: 'K-M01-2', of: 'M01', amount: 10 }]);
    const { label, records } = done(before, 'useStock', { of: 'M01', amount: 9, note });
    const [, second] = lotsOf(records, 'M01');
    expect([label, added(before, records), second && isOpened(second, on)]).toEqual([
      '9.00\u00a0L of M01 used',
      [
        { lot: 'K-M01', of: 'M01', on, what: 'used', amount: -7 },
        { lot: 'K-M01-2', of: 'M01', on, what: 'used', amount: -2 },
      ],
      true,
    ]);
  });

  test('more than stands is refused with what stands', () => {
    expect(refused(demoRecords(), 'useStock', { of: 'M01', amount: 8, note })).toBe(
      'The store has 7 L; count it first.',
    );
  });

  test('what is kept for another job is not given', () => {
    const next = done(libraryJob(), 'keepNeeded', { job: 'J02' }).records;
    expect(refused(next, 'useStock', { of: 'M01', amount: 1, job: 'J01', note })).toBe(
      'The Store has 0.00\u00a0L of M01 to give, not 1.00\u00a0L of M01. What is kept for others stays: measure again, or give back what is kept.',
    );
    expect(refused(next, 'useStock', { of: 'M01', amount: 1, job: 'J02', note })).toBe('');
  });

  test('the Store has less by exactly what was used, whatever that was', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 7, noNaN: true }), (amount) => {
        const then = done(demoRecords(), 'useStock', { of: 'M01', amount, note }).records;
        expect(usableFor(then, 'M01', { on })).toBeCloseTo(7 - amount, 6);
      }),
      { numRuns: 40 },
    );
  });
});

describe('wasteStock and sellStock', () => {
  test('a loss says why, and reaches what is kept where nothing else lies there', () => {
    const kept = done(libraryJob(), 'keepStock', { job: 'J02', of: 'M01', amount: 5 }).records;
    const { label, records } = done(kept, 'wasteStock', { of: 'M01', amount: 4, note: 'the bag was torn' });
    expect([label, added(kept, records), keptFor(records, 'M01', { on, job: 'J02' })]).toEqual([
      '4.00\u00a0L of M01 wasted',
      [{ lot: 'K-M01', of: 'M01', on, what: 'wasted', amount: -4, note: 'the bag was torn' }],
      3,
    ]);
  });

  test('what was got for goods of two lots is shared by their amounts', () => {
    const before = withBags(demoRecords(), [{ id: 'K-M01-2', of: 'M01', amount: 10 }]);
    const { records } = done(before, 'sellStock', { of: 'M01', amount: 8, coins: 800, note });
    expect(added(before, records).map(({ lot, amount, coins }) => [lot, amount, coins])).toEqual([
      ['K-M01', -7, 700],
      ['K-M01-2', -1, 100],
    ]);
  });
});

describe('countStock', () => {
  test.each([
    [5.5, -1.5],
    [7.25, 0.25],
    [0, -7],
  ])('%d L counted writes the difference', (amount, difference) => {
    const before = demoRecords();
    const { label, records } = done(before, 'countStock', { of: 'M01', amount, note: 'spring count' });
    expect([added(before, records), standsOf(records, 'M01', on), label.endsWith('of M01 counted')]).toEqual([
      [{ lot: 'K-M01', of: 'M01', on, what: 'counted', amount: difference, note: 'spring count' }],
      amount,
      true,
    ]);
  });

  test('a count that agrees changes nothing, and what nobody knew of is a lot of its own', () => {
    const before = demoRecords();
    expect(added(before, done(before, 'countStock', { of: 'M01', amount: 7, note }).records)).toEqual([]);
    expect(added(before, done(before, 'countStock', { of: 'M02', amount: 3, note }).records)).toEqual([
      { lot: 'K-M02', of: 'M02', on, what: 'in', amount: 3 },
    ]);
  });

  test('what was used later cannot have been missing before', () => {
    const used = done(demoRecords(), 'useStock', { of: 'M01', amount: 5, note }).records;
    expect(refused(used, 'countStock', { of: 'M01', amount: 1, note, on: '2027-03-05' })).toBe(
      'Some of M01 that was taken after 5 March 2027 would not have been there: count it on a later day.',
    );
  });
});

describe('keepStock, release and keepNeeded', () => {
  test('a job is kept what it needs of what is free, and no more', () => {
    const next = done(libraryJob(), 'keepNeeded', { job: 'J02' }).records;
    const amounts = ['M01', 'M24', 'M30'].map((goods) => keptFor(next, goods, { on, job: 'J02' }));
    expect(amounts).toEqual([7, 1, 0]);
    expect(refused(next, 'keepNeeded', { job: 'J02' })).toBe('The Store has nothing free that J02 still needs.');
  });

  test('litres that are kept are never kept for two jobs', () => {
    const first = done(libraryJob(), 'keepNeeded', { job: 'J02' }).records;
    const both =
      refused(first, 'keepNeeded', { job: 'J01' }) === '' ? done(first, 'keepNeeded', { job: 'J01' }).records : first;
    const [one, other] = ['J01', 'J02'].map((job) => keptFor(both, 'M01', { on, job }));
    expect([one, other, standsOf(both, 'M01', on)]).toEqual([0, 7, 7]);
  });

  test('an amount is kept by hand, some of it given back, and then all of it', () => {
    const kept = done(libraryJob(), 'keepStock', { job: 'J02', of: 'M01', amount: 3 });
    const some = done(kept.records, 'keepStock', { job: 'J02', of: 'M01', amount: -1 });
    const back = done(some.records, 'release', { job: 'J02' });
    expect([kept.label, some.label, back.label]).toEqual([
      '3 L of M01 kept for J02',
      '1 L of M01 given back by J02',
      'nothing kept for J02 any more',
    ]);
    expect([kept, some, back].map(({ records }) => keptFor(records, 'M01', { on, job: 'J02' }))).toEqual([3, 2, 0]);
    expect(refused(libraryJob(), 'keepStock', { job: 'J02', of: 'M01', amount: 30 })).toBe(
      'The Store cannot keep 30 L of M01: 7 L are free.',
    );
  });
});

describe('setLeast', () => {
  test('a material has its level, or none', () => {
    const { records } = done(demoRecords(), 'setLeast', { material: 'M01', least: 20, upTo: 60 });
    const none = done(records, 'setLeast', { material: 'M01', least: null }).records;
    expect([records, none].map((book) => [book.material.get('M01')?.least, book.material.get('M01')?.upTo])).toEqual([
      [20, 60],
      [undefined, undefined],
    ]);
    expect(refused(demoRecords(), 'setLeast', { material: 'M01', least: 20, upTo: 10 })).toBe(
      'Fill up to 10 is under the least, 20: write it above.',
    );
  });
});

describe('orders and moves', () => {
  test.each(['move', 'order'] as const)('a %s is not written or taken away by hand', (kind) => {
    const move = { id: 'K-M01', lot: 'K-M01', of: 'M01', on, what: 'in' as const, amount: 99, note };
    expect(refused(demoRecords(), 'put', { kind: 'move', record: move })).toContain('K-M01 stays');
    expect(refused(demoRecords(), 'remove', { kind, id: 'K-M01' })).toContain(kind);
  });
});
