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
    const { move } = done(records, 'putIn', typed).records;
    expect(move.get('K-M01-2')?.amount).toBeCloseTo(3.785411784, 9);
  });

  test('days and a job stand with it', () => {
    const days = { bestBefore: '2028-03-01', until: '' };
    const wishes = { ...asksOf('M26'), amount: '100', paid: '12.50', job: 'J01', ...days, note: 'new tin' };
    const { move } = done(records, 'putIn', valueOf(putInTyped(records, wishes, reading))).records;
    expect([...move.values()].slice(-2)).toEqual([
      {
        id: 'K-M26',
        lot: 'K-M26',
        of: 'M26',
        on: '2027-03-08',
        what: 'in',
        amount: 100,
        coins: 1250,
        sealed: true,
        bestBefore: '2028-03-01',
        note: 'new tin',
      },
      {
        id: 'M-1',
        lot: 'K-M26',
        of: 'M26',
        on: '2027-03-08',
        what: 'kept',
        amount: 100,
        job: 'J01',
        note: '',
      },
    ]);
  });

  test.each([
    [{ amount: '' }, 'Amount needs a figure.'],
    [{ amount: '2 kg' }, 'Amount is in L, a volume; "2 kg" does not fit.'],
    [{ amount: '2', paid: 'much' }, 'Paid for it: "much" is not an amount of money.'],
    [{ amount: '2', bestBefore: 'soon' }, 'Best before: "soon" is not a day; write it as 2027-03-10.'],
  ])('%o is refused', (wrong, fault) => {
    expect(putInTyped(records, { ...asksOf('M01'), ...wrong }, reading)).toEqual({ ok: false, fault });
  });
});
