import { derive } from '#shared-calc/derive/derived.ts';
import { describe, expect, test } from 'vitest';
import { moveTo } from '#renderer/places/jobs/write-job.ts';
import { applyChange } from '#shared-calc/records/change.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { after, jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('moveTo', () => {
  const paid = () => {
    const records = libraryJob();
    return after(records, recordDeposit(records, { job: 'J02', coins: 65_000, on: '2027-03-10' }));
  };

  test('a job without its deposit is not moved past it, and is told why', () => {
    expect(moveTo(derive(libraryJob(), '2027-03-10'), { job: 'J02', state: 'ordered' })).toEqual({
      ok: false,
      fault: 'J02 cannot be ordered: its deposit is not in. Record it with its day, or accept the quote first.',
    });
  });

  test('a job that is built takes what it uses out of the Store, and says what was not there', () => {
    const records = paid();
    const moved = valueOf(moveTo(derive(records, '2027-03-10'), { job: 'J02', state: 'built' }));
    const built = applyChange(records, moved.change);
    expect([jobOf(built, 'J02').state, built.stockEntry.has('K-M01')]).toEqual(['built', false]);
    expect(moved.short).toBe(
      'The Store had not all of it: 1 of Rectangle 600 × 445 × 600, 2.82\u00a0L of Expanded clay 8-16 mm, 0.505\u00a0m of Barrier mesh, 1.2 m wide, 1.2 mm and 19 more came from elsewhere.',
    );
  });
});
