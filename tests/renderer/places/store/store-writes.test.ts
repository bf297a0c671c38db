import { derive } from '#shared-calc/derive/derived.ts';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { keepNeeded, putIn, takeOut, takeSome, writeEntry } from '#renderer/places/store/store-writes.ts';
import { stockOnHand } from '#shared-calc/buy/stock.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
import type { Records, StockEntry } from '#shared-calc/records/records.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { after, faultOf, jobOf, libraryJob, withRecords } from '#tests/shared-calc/jobs/demo-jobs.ts';

const on = '2027-03-10';

function entryOf(records: Records, id: string): StockEntry {
  const entry = records.stockEntry.get(id);
  if (!entry) throw new Error(`no entry ${id}`);
  return entry;
}

describe('putIn', () => {
  test('what is put in is another entry beside what lies there', () => {
    const records = demoRecords();
    const change = putIn(records, { material: 'M01', amount: 45, sealed: true, note: 'from the fair' });
    const then = applyChange(records, change);
    expect([
      change.label,
      entryOf(then, 'K-M01-2').amount,
      stockOnHand(then.stockEntry.values(), { on }).get('M01'),
    ]).toEqual(['45.00\u00a0L of M01 into the Store', 45, 52]);
  });
});

describe('writeEntry', () => {
  test('a day or a job that is emptied is gone from the entry', () => {
    const records = withRecords(demoRecords(), 'stockEntry', [
      { id: 'K9', material: 'M26', amount: 100, sealed: true, reservedFor: 'J01', bestBefore: '2027-09-01', note: '' },
    ]);
    const then = after(records, writeEntry(entryOf(records, 'K9'), { reservedFor: undefined, bestBefore: undefined }));
    expect(entryOf(then, 'K9')).toEqual({ id: 'K9', material: 'M26', amount: 100, sealed: true, note: '' });
  });
});

describe('takeOut', () => {
  test('an entry taken out comes back undone', () => {
    const records = demoRecords();
    const change = takeOut(entryOf(records, 'K-M05'));
    expect(applyChange(applyChange(records, change), invertChange(change))).toEqual(records);
  });
});

describe('takeSome', () => {
  test('what is used comes out of the opened bag first, and a bag that is begun is opened', () => {
    const records = withRecords(demoRecords(), 'stockEntry', [
      { id: 'K-M01-2', material: 'M01', amount: 10, sealed: true, note: '' },
    ]);
    const then = after(records, takeSome(records, { material: 'M01', amount: 9, on }));
    expect([then.stockEntry.has('K-M01'), entryOf(then, 'K-M01-2')]).toEqual([
      false,
      { id: 'K-M01-2', material: 'M01', amount: 8, sealed: false, note: '' },
    ]);
  });

  test('more than there is is refused with what there is', () => {
    expect(faultOf(takeSome(demoRecords(), { material: 'M01', amount: 8, on }))).toMatch(
      /^The Store has 7\.00\u00a0L of M01 to give, not 8\.00/,
    );
  });

  test('what is kept for another job is not given', () => {
    const records = libraryJob();
    const kept = after(records, keepNeeded(derive(records, on), jobOf(records, 'J02')));
    expect(takeSome(kept, { material: 'M01', amount: 1, on, job: 'J01' }).ok).toBe(false);
    expect(takeSome(kept, { material: 'M01', amount: 1, on, job: 'J02' }).ok).toBe(true);
  });

  test('the Store has less by exactly what was used, whatever that was', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 7, noNaN: true }), (amount) => {
        const records = demoRecords();
        const then = after(records, takeSome(records, { material: 'M01', amount, on }));
        const left = stockOnHand(then.stockEntry.values(), { on }).get('M01') ?? 0;
        expect(left).toBeCloseTo(7 - amount, 6);
      }),
    );
  });
});

describe('keepNeeded', () => {
  test('a job is kept what it needs of what is free, and no more', () => {
    const records = libraryJob();
    const kept = after(records, keepNeeded(derive(records, on), jobOf(records, 'J02')));
    const reserved = [...kept.stockEntry.values()].filter(({ reservedFor }) => reservedFor === 'J02');
    const amounts = new Map(reserved.map(({ material, amount }) => [material, Number(amount.toFixed(3))]));
    expect([amounts.get('M01'), amounts.get('M24'), amounts.has('M30')]).toEqual([7, 1, false]);
  });

  test('once it is kept there is nothing more to keep', () => {
    const records = libraryJob();
    const kept = after(records, keepNeeded(derive(records, on), jobOf(records, 'J02')));
    expect(faultOf(keepNeeded(derive(kept, on), jobOf(kept, 'J02')))).toBe(
      'The Store has nothing free that J02 still needs.',
    );
  });

  test('reserved litres are never kept for two jobs', () => {
    const records = libraryJob();
    const first = after(records, keepNeeded(derive(records, on), jobOf(records, 'J02')));
    const second = keepNeeded(derive(first, on), jobOf(first, 'J01'));
    const both = second.ok ? applyChange(first, second.value) : first;
    const total = [...both.stockEntry.values()]
      .filter(({ material }) => material === 'M01')
      .reduce((sum, { amount }) => sum + amount, 0);
    expect(total).toBeCloseTo(7, 9);
  });
});
