import { describe, expect, test } from 'vitest';
import { moveTo, writeJob } from '#renderer/places/jobs/write-job.ts';
import { applyChange, invertChange } from '#shared-calc/records/change.ts';
import { recordDeposit } from '#shared-calc/jobs/record-deposit.ts';
import { after, jobOf, libraryJob, valueOf } from '#tests/shared-calc/jobs/demo-jobs.ts';

describe('writeJob', () => {
  test('what is told of a job is rewritten under a label that says what', () => {
    const records = libraryJob();
    const change = valueOf(writeJob(records, 'J02', { client: 'Brackenlume Library', site: 'Oak shelf' }));
    expect([change.label, jobOf(applyChange(records, change), 'J02').site]).toEqual([
      'J02: client, place',
      'Oak shelf',
    ]);
  });

  test('a date that is emptied is gone', () => {
    const records = libraryJob({ handover: '2027-06-04' });
    const without = after(records, writeJob(records, 'J02', { handover: undefined }));
    expect('handover' in jobOf(without, 'J02')).toBe(false);
  });

  test('the way in is measured, and no longer known', () => {
    const records = libraryJob();
    const change = valueOf(writeJob(records, 'J02', { narrowestMm: 780 }));
    const measured = applyChange(records, change);
    expect([change.label, jobOf(measured, 'J02').narrowestMm]).toEqual(['J02: narrowest on the way in', 780]);
    expect('narrowestMm' in jobOf(after(measured, writeJob(measured, 'J02', { narrowestMm: undefined })), 'J02')).toBe(
      false,
    );
    expect(writeJob(records, 'J02', { narrowestMm: -1 }).ok).toBe(false);
  });

  test('a job keeps a title', () => {
    expect(writeJob(libraryJob(), 'J02', { title: ' ' })).toEqual({ ok: false, fault: 'A job needs a title.' });
  });

  test('undone, every record is as it was', () => {
    const records = libraryJob();
    const change = valueOf(writeJob(records, 'J02', { note: 'Second bell at noon', basis: 'packs' }));
    expect(applyChange(applyChange(records, change), invertChange(change))).toEqual(records);
  });
});

describe('moveTo', () => {
  const paid = () => {
    const records = libraryJob();
    return after(records, recordDeposit(records, { job: 'J02', coins: 65_000, on: '2027-03-10' }));
  };

  test('a job without its deposit is not moved past it, and is told why', () => {
    expect(moveTo(libraryJob(), { job: 'J02', state: 'ordered', today: '2027-03-10' })).toEqual({
      ok: false,
      fault: 'J02 cannot be ordered: its deposit is not in. Record it with its day, or accept the quote first.',
    });
  });

  test('a job that is built takes what it uses out of the Store, and says what was not there', () => {
    const records = paid();
    const moved = valueOf(moveTo(records, { job: 'J02', state: 'built', today: '2027-03-10' }));
    const built = applyChange(records, moved.change);
    expect([jobOf(built, 'J02').state, built.stockEntry.has('K-M01')]).toEqual(['built', false]);
    expect(moved.short).toBe(
      'The Store had not all of it: 1 of Rectangle 600 × 445 × 600, 2.82\u00a0L of Expanded clay 8-16 mm, 0.505\u00a0m of Barrier mesh, 1.2 m wide, 1.2 mm and 19 more came from elsewhere.',
    );
  });
});
