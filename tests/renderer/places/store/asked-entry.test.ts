import { done } from '#tests/shared-calc/acts/do-act.ts';
import { describe, expect, test } from 'vitest';
import { asksOf, putInTyped } from '#renderer/places/store/asked-entry.ts';
import { displayOf } from '#shared-calc/records/display-of.ts';
import { workshopOf } from '#shared-calc/records/workshop-of.ts';
import { demoRecords } from '#tests/demo-bench.ts';
import { valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

const records = demoRecords();
const reading = { display: displayOf(workshopOf(records)), today: '2027-03-10' };

describe('putInTyped', () => {
  test("an amount in another unit is kept in the material's own", () => {
    const typed = valueOf(putInTyped(records, { ...asksOf('M01'), amount: '1 gal', sealed: false }, reading));
    const { stockEntry } = done(records, 'putIn', typed).records;
    expect(stockEntry.get('K-M01-2')?.amount).toBeCloseTo(3.785411784, 9);
  });

  test('days and a job stand with it', () => {
    const wishes = { ...asksOf('M26'), amount: '100', job: 'J01', bestBefore: '2028-03-01', note: 'new tin' };
    const { stockEntry } = done(records, 'putIn', valueOf(putInTyped(records, wishes, reading))).records;
    expect(stockEntry.get('K-M26')).toEqual({
      id: 'K-M26',
      material: 'M26',
      amount: 100,
      sealed: true,
      note: 'new tin',
      reservedFor: 'J01',
      bestBefore: '2028-03-01',
    });
  });

  test.each([
    [{ amount: '' }, 'Amount needs a figure.'],
    [{ amount: '2 kg' }, 'Amount is in L, a volume; "2 kg" does not fit.'],
    [{ amount: '2', bestBefore: 'soon' }, 'Best before: "soon" is not a day; write it as 2027-03-10.'],
  ])('%o is refused', (wrong, fault) => {
    expect(putInTyped(records, { ...asksOf('M01'), ...wrong }, reading)).toEqual({ ok: false, fault });
  });
});
